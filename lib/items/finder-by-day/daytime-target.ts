import { dotResidualArcmin } from '../../finder/dot-residual';
import { nearestToSunDeg } from '../../finder/way-past-sun';
import { choice, match, numeric, point } from '../build-item';
import { inNumber, inThree } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import type { ItemDraw, ItemFamily } from '../item-family';
import { besideSun, drawFar, drawNear, farThings, metres, stripDrawing, stripX } from './day-scene';

const off = (apartMm: number, distanceM: number): number =>
  dotResidualArcmin({ apartMm, distanceM });

const movers = [
  'gull on a roof',
  'slow kite',
  'small cloud',
  'lorry on a hill',
  'balloon',
] as const;
const an = (name: string): string => (/^[aeiou]/.test(name) ? `an ${name}` : `a ${name}`);

type Thing = { name: string; distanceM: number; fists: number };

/** A far one that is clear, a near one, a far one by the Sun, and one that moves. */
function drawFour({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const [farName = 'mast', sunName = 'chimney'] = random.shuffle(farThings);
  const side = () => (random.integer(0, 1) === 0 ? 1 : -1);
  return {
    kit,
    apartMm: kit.finderBesideTubeMm,
    good: {
      name: farName,
      distanceM: drawFar(random).distanceM,
      fists: side() * random.integer(5, 8),
    },
    near: { ...drawNear(random), fists: side() * random.integer(5, 8) },
    bySun: {
      name: sunName,
      distanceM: drawFar(random).distanceM,
      fists: side() * random.integer(1, 2),
    },
    mover: {
      name: pickOne(random, movers),
      distanceM: 50 * random.integer(6, 20),
      fists: side() * random.integer(5, 8),
    },
  };
}

function whichOne(draw: ItemDraw) {
  const { kit, apartMm, good, near, bySun, mover } = drawFour(draw);
  const told = ({ name, distanceM, fists }: Thing) =>
    `${capitalised(an(name))}, ${metres(distanceM)} away, ${besideSun(fists)}`;
  return choice({
    prompt: `An adult stands by, and ${kit.name} is in the shadow of ${pickOne(draw.random, ['a building', 'the school', 'the gym', 'a high wall'])} with the Sun low. Which of these do you set the finder on?`,
    explanation:
      'Far away, standing still, and three fists clear of the Sun: all three, and the Sun comes first.',
    right: {
      text: told(good),
      reason: `It stands still, leaves ${inThree(off(apartMm, good.distanceM))}′ at the stars, and is ${String(Math.abs(good.fists))} fists from the Sun.`,
    },
    wrong: [
      {
        text: told(near),
        reason: `Too near: the dot would be off by ${inThree(off(apartMm, near.distanceM))}′ at the stars.`,
        misconception: 'near-target-good',
      },
      {
        text: told(bySun),
        reason: `Too near the Sun. Three fists, ${String(nearestToSunDeg)}°, are the least.`,
        misconception: 'sun-harmless',
      },
      { text: told(mover), reason: 'It moves. Before the dot is on it, it has gone.' },
    ],
  });
}

/** Half of what covers the dot itself would be nonsense to ask for; fields of the kits are not. */
const allowed = [1, 2, 3, 5, 8, 10] as const;

function howFarAtLeast({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const apartMm = 10 * random.integer(6, 10);
  const atMost = pickOne(random, allowed);
  const key = apartMm / 1000 / Math.tan((atMost / 60) * (Math.PI / 180));
  return numeric({
    prompt: `The finder of ${kit.name} sits ${String(apartMm)} mm beside the tube. At the stars the dot may be off by ${String(atMost)}′ at most. How far away must the target be? (1 mm at 1 m is 3.44′.)`,
    unit: 'm',
    key,
    tolerance: { mode: 'relative', full: 0.06, zero: 0.3 },
    explanation: `${String(apartMm)} × 3.44′ ÷ ${String(atMost)}′ is ${inThree(key)} m, or anything farther.`,
    slips: [
      {
        gives: Number(((apartMm * atMost) / 3.44).toFixed(1)),
        reason: 'That way a stricter limit would need a nearer target. It needs a farther one.',
      },
      {
        gives: Number((apartMm / atMost).toFixed(2)),
        reason: 'That forgets that each millimetre at 1 m is 3.44′.',
      },
    ].filter(({ gives }) => Math.abs(gives / key - 1) > 0.1),
  });
}

function whatIsWrong(draw: ItemDraw) {
  const { kit, apartMm, good, near, bySun, mover } = drawFour(draw);
  const left = ({ name, distanceM, fists }: Thing) =>
    `${capitalised(an(name))}, ${metres(distanceM)} away, ${String(Math.abs(fists))} ${Math.abs(fists) === 1 ? 'fist' : 'fists'} from the Sun`;
  return match({
    prompt:
      `${an(good.name)}, ${an(near.name)}, ${an(bySun.name)} and ${an(mover.name)}: what is to be said of each as a daytime target for ${kit.name}?`.replace(
        /^a/,
        'A',
      ),
    explanation: 'Ask three things: is it clear of the Sun, is it far, does it stand still?',
    pairs: [
      { left: left(good), right: 'It will do', reason: 'far, still, and clear of the Sun.' },
      {
        left: left(near),
        right: 'Too near',
        reason: `the dot would be off by ${inThree(off(apartMm, near.distanceM))}′ at the stars.`,
      },
      {
        left: left(bySun),
        right: 'A danger to your eyes',
        reason: `three fists, ${String(nearestToSunDeg)}°, from the Sun are the least.`,
      },
      { left: left(mover), right: 'It will not wait', reason: 'it moves on while you turn.' },
    ],
  });
}

function pointAtIt({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const apartMm = kit.finderBesideTubeMm;
  const sunUp = random.integer(1, 2);
  const [one, two] = random.integer(0, 1) === 0 ? [-1, 1] : [1, -1];
  const nearM = drawNear(random).distanceM;
  const farM = drawFar(random).distanceM;
  const middleM = 10 * random.integer(3, 6);
  const things = [
    { fists: one * random.integer(5, 6), distanceM: farM },
    { fists: two * random.integer(5, 6), distanceM: nearM },
    { fists: one * 1, distanceM: 2 * farM },
    { fists: two * 3.9, distanceM: middleM },
  ];
  const lettered = random.shuffle(things).map((thing, i) => ({
    ...thing,
    // Numbers: the rings bring letters of their own.
    letter: '1234'.charAt(i),
  }));
  const spot = ({ fists, letter }: (typeof lettered)[number]) => ({
    x: stripX(fists),
    y: 137,
    where: `${letter}, ${inNumber(Math.abs(fists))} ${Math.abs(fists) === 1 ? 'fist' : 'fists'} ${fists > 0 ? 'right' : 'left'} of the Sun`,
  });
  const key = lettered.find(({ distanceM }) => distanceM === farM);
  if (key === undefined) throw new RangeError('the far one is there');
  const list = [...lettered].sort((a, b) => a.letter.localeCompare(b.letter));
  return point({
    prompt: `Number ${list.map(({ letter, distanceM }) => `${letter} is ${metres(distanceM)} away`).join(', ')}. An adult stands by in the shadow of the school. Which one do you set ${kit.name}’s finder on?`,
    drawing: stripDrawing(
      `The horizon with a mark every fist. The Sun stands ${String(sunUp)} ${sunUp === 1 ? 'fist' : 'fists'} above it. ${list.map((thing) => spot(thing).where.replace(',', ' stands')).join('; ')}.`,
      sunUp,
      lettered,
    ),
    explanation:
      'First strike out what is within three fists of the Sun. Of the rest take the farthest.',
    right: {
      ...spot(key),
      reason: `Clear of the Sun, and at ${metres(farM)} the dot is off by ${inThree(off(apartMm, farM))}′ only.`,
    },
    wrong: lettered
      .filter((thing) => thing !== key)
      .map((thing) =>
        Math.abs(thing.fists) < 3
          ? {
              ...spot(thing),
              reason: 'Far away, but within three fists of the Sun. Never.',
              misconception: 'sun-harmless' as const,
            }
          : {
              ...spot(thing),
              reason: `Clear of the Sun, but at ${metres(thing.distanceM)} the dot is off by ${inThree(off(apartMm, thing.distanceM))}′. There is a farther one.`,
              misconception: 'near-target-good' as const,
            },
      ),
  });
}

/** Clear of the Sun, far, and standing still. */
export const daytimeTarget: ItemFamily = {
  id: 'daytime-target',
  lesson: 'finder-by-day',
  objective: 'target',
  skill: 'finder',
  title: 'What to set a finder on',
  version: 1,
  templates: {
    'which-one': whichOne,
    'how-far-at-least': howFarAtLeast,
    'what-is-wrong': whatIsWrong,
    'point-at-it': pointAtIt,
  },
};
