import type { FieldOffset } from '../../optics/image-orientation';
import type { Random } from '../../variants/random';
import { numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { eyepieceDrawing, fieldShapes, inView, oneView } from './eyepiece-view';
import { focalText, radiusOf, someKit } from './kit-fields';
import { angleText, arcmin, capital, figures } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** Good centring leaves a tenth of the field's radius: as the product's pair worth has it. */
export const goodShare = 0.1;

/** Shares of the radius that an eye can tell apart in a field with a cross. */
const shares = [0.05, 0.3, 0.5, 0.75] as const;
const shareNames = {
  0.05: 'all but in the middle',
  0.3: 'three tenths of the way from the middle to the edge',
  0.5: 'half-way from the middle to the edge',
  0.75: 'three quarters of the way from the middle to the edge',
} as const;

const offsetOf = (random: Random, distance: number): FieldOffset => {
  const angle = random.between(0, 2 * Math.PI);
  return { rightArcmin: distance * Math.cos(angle), upArcmin: distance * Math.sin(angle) };
};

function someField({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const eyepiece = pickOne(random, kit.eyepieces);
  return {
    name: `${kit.name}’s ${focalText(kit, eyepiece.id)} eyepiece`,
    radius: radiusOf(kit, eyepiece.id),
  };
}

function readOffset(draw: ItemDraw) {
  const { name, radius } = someField(draw);
  const share = pickOne(draw.random, [0.25, 0.5, 0.75] as const);
  const key = share * radius;
  const seen = offsetOf(draw.random, key);
  const part = { 0.25: 'a quarter', 0.5: 'half', 0.75: 'three quarters' }[share];
  return numeric({
    prompt: `This is the field of ${name}. From edge to edge it shows ${figures(2 * radius, 0)}′. The dashed rings are evenly spaced. How far is the star from the middle?`,
    drawing: eyepieceDrawing(
      fieldShapes([seen], radius, { rings: true }),
      `A round field with three dashed rings, evenly spaced between middle and edge. The star sits on the ${{ 0.25: 'first', 0.5: 'second', 0.75: 'third' }[share]} ring from the middle.`,
    ),
    unit: 'arcminutes',
    key: Number(key.toFixed(2)),
    tolerance: { mode: 'relative', full: 0.08, zero: 0.3 },
    explanation: `From the middle to the edge it is half of ${figures(2 * radius)}′: ${figures(radius)}′. The star is ${part} of that way out.`,
    slips: [
      {
        gives: Number((2 * key).toFixed(2)),
        reason: `You took ${part} of the whole width. Count from the middle: half the width is ${figures(radius)}′.`,
      },
    ],
  });
}

function bestCentred(draw: ItemDraw) {
  const { random } = draw;
  const { name, radius } = someField(draw);
  const views = random.shuffle(shares);
  const cells = views.map((share, index) => ({
    share,
    letter: capital(index),
    view: { cx: 84 + 152 * (index % 2), cy: 74 + 152 * Math.floor(index / 2), radius: 62 },
  }));
  const drawn = cells.flatMap(({ share, letter, view }) => [
    ...fieldShapes([offsetOf(random, share * radius)], radius, { view }),
    {
      kind: 'text' as const,
      x: view.cx - 72,
      y: view.cy - 48,
      text: letter,
      size: 15,
      tone: 'ink' as const,
      bold: true,
    },
  ]);
  const byShare = [...cells].sort((a, b) => a.share - b.share);
  return order({
    prompt: `Four views in ${name}. Put them in order, from the best centred star to the worst.`,
    drawing: eyepieceDrawing(
      drawn,
      `Four round fields. ${cells.map(({ letter, share }) => `${letter}: the star is ${shareNames[share]}.`).join(' ')}`,
      304,
    ),
    steps: byShare.map(({ letter }) => `View ${letter}`),
    rules: byShare.slice(1).map(({ share }, index) => ({
      first: index,
      then: index + 1,
      reason: `its star is ${figures((byShare[index]?.share ?? 0) * radius)}′ from the middle, the other ${figures(share * radius)}′.`,
    })),
    explanation: `Only the distance from the middle counts, in whatever direction. The edge is ${arcmin(radius)} out.`,
  });
}

function wellCentred(draw: ItemDraw) {
  const { random } = draw;
  const { name, radius } = someField(draw);
  const limit = goodShare * radius;
  const outside = random.shuffle([0.3, 0.5, 0.75] as const);
  const distances = random.shuffle([0.05, ...outside].slice(0, 4));
  // Each in a quarter of its own, so that no two lie on one another.
  const spots = distances.map((share, index) => {
    const angle = ((90 * index + random.between(20, 70)) * Math.PI) / 180;
    const seen = {
      rightArcmin: share * radius * Math.cos(angle),
      upArcmin: share * radius * Math.sin(angle),
    };
    const off = arcmin(share * radius);
    return {
      share,
      ...inView(seen, radius),
      where: `${capitalised(shareNames[share as keyof typeof shareNames])}, ${quarters[index] ?? ''}`,
      reason:
        share * radius <= limit
          ? `${figures(share * radius)}′ off: within ${figures(limit)}′, a tenth of the way to the edge.`
          : `${off} off, and a tenth of the way to the edge is ${figures(limit)}′. Bring it nearer first.`,
    };
  });
  const right = spots.find(({ share }) => share * radius <= limit);
  if (right === undefined) throw new Error('one of the four is centred');
  const asSpot = ({ x, y, where, reason }: (typeof spots)[number]) => ({ x, y, where, reason });
  return point({
    prompt: `Four tries at centring with ${name}, drawn in one field ${figures(2 * radius, 0)}′ wide. Point at the star that is centred well enough to confirm.`,
    drawing: eyepieceDrawing(
      fieldShapes(
        spots.map(({ share }, index) => {
          const spot = spots[index];
          return spot === undefined
            ? { rightArcmin: share, upArcmin: 0 }
            : {
                rightArcmin: ((spot.x - oneView.cx) / oneView.radius) * radius,
                upArcmin: ((oneView.cy - spot.y) / oneView.radius) * radius,
              };
        }),
        radius,
      ),
      `A round field with a cross in its middle and four stars at different distances from it.`,
    ),
    right: asSpot(right),
    wrong: spots.filter((spot) => spot !== right).map(asSpot),
    explanation: `A tenth of the way from the middle to the edge is good centring: here ${figures(limit)}′. Go on until the star sits there.`,
  });
}

const quarters = ['upper right', 'upper left', 'lower left', 'lower right'];

function tenthOfField({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const eyepiece = pickOne(random, kit.eyepieces);
  const radius = radiusOf(kit, eyepiece.id);
  const key = goodShare * radius;
  const ask = pickOne(random, [
    'How far from the middle may the star be?',
    'How close to the middle must the star come?',
    'What is the most that the star may be off?',
  ]);
  return numeric({
    prompt: `Good centring leaves a star no farther off than a tenth of the way from the middle to the edge. ${kit.name} shows ${angleText(2 * radius)} from edge to edge with the ${focalText(kit, eyepiece.id)} eyepiece. ${ask}`,
    unit: 'arcminutes',
    key: Number(key.toFixed(2)),
    tolerance: { mode: 'relative', full: 0.1, zero: 0.4 },
    explanation: `${angleText(2 * radius)} from edge to edge is ${figures(radius)}′ from the middle to the edge. A tenth of that is ${figures(key, 2)}′.`,
    slips: [
      {
        gives: Number((2 * key).toFixed(2)),
        reason:
          'That is a tenth of the whole width. From the middle to the edge it is only half as far.',
      },
      { gives: Number(radius.toFixed(2)), reason: 'That is the edge itself. Take a tenth of it.' },
    ],
  });
}

/** Common practice, no source. */
const helps = [
  {
    text: 'Look straight in, not from the side',
    reason: 'From the side the edge of the field hides, and the middle is misjudged.',
  },
  {
    text: 'Change to the shorter eyepiece for the last bit',
    reason: 'The same slip looks larger in it, so it is seen and mended.',
  },
  {
    text: 'Press near the middle of the rocker strip',
    reason: 'There the tube moves slowly enough to stop where you want.',
  },
  {
    text: 'Put the star slightly out of focus',
    reason: 'A small round disc is easier to set on the middle than a point.',
  },
  {
    text: 'Halve the field in thought, both ways',
    reason: 'Judging halves is easier than judging a distance from a middle that is not marked.',
  },
] as const;
const hinders = [
  {
    text: 'Trust the red dot and skip the eyepiece',
    reason: 'Dot and tube differ by many arcminutes; the eyepiece shows the true middle.',
    misconception: 'dot-is-centring',
  },
  {
    text: 'Nudge the tube by hand for the last bit',
    reason: 'The mount does not see the hand: its readings stay where they were.',
    misconception: 'push-by-hand',
  },
  {
    text: 'Press near the end of the rocker strip',
    reason: 'There the tube runs fast, and you overshoot.',
  },
  {
    text: 'Confirm as soon as the star is in view',
    reason: 'Whatever is left off the middle goes into the alignment.',
  },
  {
    text: 'Go back and forth until it looks right',
    reason: 'Then nobody knows on which side the play was left. End with right and up.',
    misconception: 'play-does-no-harm',
  },
] as const;

function whatHelps({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const right = random.shuffle(helps).slice(0, random.integer(2, 3));
  const wrong = random.shuffle(hinders).slice(0, 2 + (right.length === 2 ? 1 : 0));
  const who = pickOne(random, ['A friend', 'Your partner', 'Somebody new', 'A younger pupil']);
  return several({
    prompt: `${who} centres a star with ${kit.name} and asks for advice. What helps?`,
    right: [...right],
    wrong: [...wrong],
    explanation:
      'Slow moves, a view that shows small slips, and the eyepiece rather than the dot. The hand stays off the tube.',
  });
}

/** How near to the middle, and how to tell. */
export const middleOfTheField: ItemFamily = {
  id: 'middle-of-the-field',
  lesson: 'align-on-two-stars',
  objective: 'centre',
  skill: 'align',
  title: 'In the middle, near enough',
  version: 2,
  templates: {
    'read-offset': readOffset,
    'best-centred': bestCentred,
    'well-centred': wellCentred,
    'tenth-of-field': tenthOfField,
    'what-helps': whatHelps,
  },
};
