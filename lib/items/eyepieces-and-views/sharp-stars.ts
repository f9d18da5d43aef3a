import { blurArcmin } from '../../optics/focus';
import { choice, numeric, order, point, several } from '../build-item';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemDraw, ItemFamily } from '../item-family';
import { inNumber } from './words';
import { pickOne } from '../../variants/pick-one';

const mark = (mm: number): string => `the ${String(mm)} mm mark`;

/** A focuser with a scale: where it is sharp, two places on one side of it, and the discs there. */
function drawFocuser({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const side = random.integer(0, 1) === 0 ? 1 : -1;
  const sharp = random.integer(16, 24);
  const farther = 2 * random.integer(4, 6);
  const nearer = farther / 2 + random.integer(-1, 1);
  const disc = (mm: number) => `${inNumber(blurArcmin(kit, mm - sharp), 1)}′`;
  return { kit, sharp, far: sharp + side * farther, near: sharp + side * nearer, disc };
}

function whereSharp(draw: ItemDraw) {
  const { kit, sharp, far, near } = drawFocuser(draw);
  const disc = (mm: number) => `${inNumber(blurArcmin(kit, mm - sharp), 2)}′`;
  return numeric({
    prompt: `${kit.name} shows a star as a disc ${disc(far)} wide with the focuser at ${mark(far)}, and ${disc(near)} wide at ${mark(near)}. At which mark will it be a point?`,
    unit: 'mm',
    key: sharp,
    tolerance: { mode: 'absolute', full: 0.8, zero: Math.abs(near - sharp) - 0.5 },
    explanation: `The disc shrinks evenly. From ${mark(far)} to ${mark(near)} it lost what ${String(Math.abs(far - near))} mm are worth; the rest is worth ${String(Math.abs(near - sharp))} mm more.`,
    slips: [
      { gives: near, reason: `There it is still ${disc(near)} wide. Go on until it is a point.` },
      {
        gives: 2 * far - sharp,
        reason: 'That is the other way: the disc would grow. Go on the way in which it shrank.',
      },
    ],
  });
}

function whatNow(draw: ItemDraw) {
  const { random } = draw;
  const { kit, far, near, disc } = drawFocuser(draw);
  const shrank = random.integer(0, 1) === 0;
  const [first, then] = shrank ? [far, near] : [near, far];
  const [wordFirst, wordThen] = [disc(first), disc(then)];
  const goOn = `Go on the same way, beyond ${mark(then)}, and watch the disc`;
  const goBack = `Turn back towards ${mark(first)} and beyond, and watch the disc`;
  return choice({
    prompt: `In ${kit.name} a star is a disc ${wordFirst} wide. You turn the focuser from ${mark(first)} to ${mark(then)}, and the disc is ${wordThen} wide. What now?`,
    explanation:
      'Smaller is nearer to focus. Turn until the disc is smallest, go a little past, and come back to the best.',
    right: {
      text: shrank ? goOn : goBack,
      reason: `The disc ${shrank ? 'shrank' : 'grew'}, so focus lies ${shrank ? 'farther that way' : 'the other way'}.`,
    },
    wrong: [
      {
        text: shrank ? goBack : goOn,
        reason: `The disc ${shrank ? 'shrank' : 'grew'} on the way to ${mark(then)}: that way ${shrank ? 'is right' : 'leads away from focus'}.`,
      },
      {
        text: `Stop here: a disc of ${wordThen} is the star itself, seen from nearer`,
        reason:
          'Stars are so far away that they stay points in every telescope. A disc is out of focus.',
        misconception: 'disc-is-the-star',
      },
      {
        text: `Leave it at ${mark(then)} and put a stronger eyepiece in against the disc`,
        reason: 'A stronger eyepiece only shows the blur larger. Focus first.',
        misconception: 'more-power-better',
      },
    ],
  });
}

function smallestFirst(draw: ItemDraw) {
  const { random } = draw;
  const { kit, sharp } = drawFocuser(draw);
  const gaps = random.shuffle([1, 2, 3, 4, 5, 6, 7, 8]).slice(0, 4);
  const places = gaps
    .sort((a, b) => a - b)
    .map((gap) => sharp + (random.integer(0, 1) === 0 ? gap : -gap));
  const far = (mm: number) => `${String(Math.abs(mm - sharp))} mm from focus`;
  return order({
    prompt: `${kit.name} is sharp with its focuser at ${mark(sharp)}. Put these places of the focuser in order, the smallest star disc first.`,
    explanation: `Only the distance from ${mark(sharp)} counts, inward or outward: ${places.map((mm) => `${String(mm)} is ${far(mm)}`).join(', ')}.`,
    steps: places.map((mm) => `At ${mark(mm)}`),
    rules: places.slice(1).map((mm, first) => ({
      first,
      then: first + 1,
      reason: `the first is ${far(places[first] ?? mm)}, the other ${far(mm)}.`,
    })),
  });
}

/** Three views side by side; the shares are discs over the width of the field. */
function threeRings(shares: readonly number[]): ItemDrawing {
  const middles = [56, 160, 264];
  const radius = 46;
  return {
    width: 320,
    height: 130,
    alternative: `Three round views. From left to right the star in them is a disc ${shares.map((share) => `${inNumber(share * 100)} hundredths`).join(', ')} of the view wide.`,
    shapes: shares.flatMap((share, i): Shape[] => [
      { kind: 'circle', cx: middles[i] ?? 0, cy: 62, r: radius, fill: 'sky', stroke: 'strong' },
      { kind: 'circle', cx: middles[i] ?? 0, cy: 62, r: radius * share, fill: 'sky-lamp' },
    ]),
  };
}
const ringNames = ['in the left view', 'in the middle view', 'in the right view'] as const;

/** Predict: twice as far from focus, twice as wide. */
function whichView(draw: ItemDraw) {
  const { random } = draw;
  const { kit, sharp } = drawFocuser(draw);
  const side = random.integer(0, 1) === 0 ? 1 : -1;
  const gap = pickOne(random, [2, 4]);
  const factor = pickOne(random, [0.5, 2]);
  const share = 0.16;
  const other = -side * gap * factor;
  const views = random.shuffle([
    { share: share * factor, right: true },
    { share: share * (factor === 2 ? 1 : 2), right: false },
    { share: share * (factor === 2 ? 3.6 : 1), right: false },
  ]);
  const spots = views.map((view, i) => ({
    x: [56, 160, 264][i] ?? 0,
    y: 62,
    where: ringNames[i] ?? '',
    right: view.right,
    reason: view.right
      ? `${String(Math.abs(other))} mm from focus instead of ${String(gap)} mm: ${factor === 2 ? 'twice' : 'half'} as wide.`
      : `This disc is ${inNumber(view.share * 100)} hundredths of the view wide. At ${inNumber(Math.abs(other))} mm from focus it must be ${inNumber(share * factor * 100)}.`,
  }));
  const bare = ({ x, y, where, reason }: (typeof spots)[number]) => ({ x, y, where, reason });
  const [key] = spots.filter((spot) => spot.right).map(bare);
  if (key === undefined) throw new RangeError('one view is right');
  return point({
    prompt: `${kit.name} is sharp at ${mark(sharp)}. At ${mark(sharp + side * gap)} a star’s disc is ${inNumber(share * 100)} hundredths of the view wide. Which view do you expect at ${mark(sharp + other)}?`,
    drawing: threeRings(views.map((view) => view.share)),
    explanation:
      'The disc grows evenly with the distance from focus, and to both sides alike: half as far, half as wide.',
    right: key,
    wrong: spots.filter((spot) => !spot.right).map(bare),
  });
}

const yes = [
  ['you change the eyepiece', 'Each eyepiece comes to focus at another place.'],
  ['the star diagonal or prism comes out', 'Without it the light has a shorter way to go.'],
  [
    'a friend with other eyes looks',
    'Eyes differ. Whoever looks may turn the focuser for themselves.',
  ],
  [
    'someone takes their glasses off to look',
    'Without glasses a short-sighted eye needs another focus.',
  ],
  ['you turn from a tree nearby to a star', 'What is near comes to focus farther out than a star.'],
  [
    'the tube has cooled by many degrees',
    'Tube and glass shrink a little as they cool, and focus moves with them.',
  ],
] as const;
const no = [
  [
    'you turn from a bright star to a faint one',
    'All stars are so far away that they share one focus.',
  ],
  ['you turn from one star to the Moon', 'The Moon is far enough to share the focus of the stars.'],
  ['the star has drifted to the edge', 'Bring it back to the middle; the focuser may stay.'],
  ['the motors are switched on', 'Motors follow the sky. They do not move the focuser.'],
  ['you look at a planet after a star', 'Planets too are as good as infinitely far.'],
  ['you set the red dot anew', 'The dot has nothing to do with the eyepiece.'],
] as const;

function focusAgain({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const written = ([text, reason]: readonly [string, string]) => ({
    text: `When ${text}`,
    reason,
  });
  return several({
    prompt: pickOne(random, [
      `${kit.name} was in focus. When must you expect to focus it again?`,
      `The stars in ${kit.name} were points. After which of these may they be discs?`,
      `You focused ${kit.name} well. Which of these can spoil the focus?`,
    ]),
    explanation:
      'Focus changes with the way of the light (eyepiece, diagonal, tube), with the eye, and with things that are near. All that shines in the sky shares one focus.',
    right: random.shuffle(yes).slice(0, random.integer(2, 3)).map(written),
    wrong: random.shuffle(no).slice(0, 2).map(written),
  });
}

/** Focus: a star is a point or it is not yet sharp. */
export const sharpStars: ItemFamily = {
  id: 'sharp-stars',
  lesson: 'eyepieces-and-views',
  objective: 'focus',
  skill: 'field',
  title: 'Bringing stars to focus',
  version: 1,
  templates: {
    'where-sharp': whereSharp,
    'what-now': whatNow,
    'smallest-first': smallestFirst,
    'which-view': whichView,
    'focus-again': focusAgain,
  },
};
