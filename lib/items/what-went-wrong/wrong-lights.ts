import { honestMount, outcomeOf, saidOf } from '../align-on-two-stars/aligning';
import { chartPoint, chartWhere, type ChartPlace } from '../align-on-two-stars/sky-chart';
import { deg, placeText } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { choice, numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { asked, chartOf, chartToPointAt, closeBy, wellApart } from './lights-around';

function whatWasCentred(draw: ItemDraw) {
  const { kit, a, b, lights, centred, outcome, due } = asked(draw, closeBy);
  const table = lights.map(({ label, fromA }) => `${label} ${deg(fromA)}`).join(', ');
  const swung = centred.fromA > due ? 'farther' : 'less far';
  const by = deg(Math.abs(centred.fromA - due));
  const text = ({ label, fromA }: (typeof lights)[number]): string =>
    `${label}, ${deg(fromA)} from A`;
  return choice({
    prompt: `A mount like ${kit.name}’s with a fixed zero says: “${saidOf(outcome)}.” Its tube swung ${swung} than it should. A was right. From A it is ${deg(due)} to B, which was asked for; to other bright lights near B it is: ${table}. Which was centred for B?`,
    drawing: chartOf({ a, b, lights }),
    right: {
      text: text(centred),
      reason: `${deg(centred.fromA)} and ${deg(due)} differ by ${by}, and the tube swung ${swung}.`,
    },
    wrong: [
      ...lights
        .filter((one) => one !== centred)
        .map((one) => ({
          text: text(one),
          reason: `Then these two would disagree by ${deg(Math.abs(one.fromA - due))}, the tube having swung ${one.fromA > due ? 'too far' : 'not far enough'}.`,
        })),
      {
        text: `B itself, ${deg(due)} from A`,
        reason: 'Then the two angles would be the same, but for some arcminutes.',
      },
    ],
    explanation:
      'Add what the mount says to the angle that was due, or take it off. Look what stands there.',
  });
}

function howFarItSwung(draw: ItemDraw) {
  const { random } = draw;
  const { kit, centred, due } = asked(draw, closeBy);
  const by = Math.round(10 * Math.abs(centred.fromA - due)) / 10;
  const tooFar = centred.fromA > due;
  const from = Math.round(10 * due) / 10;
  const key = Number((tooFar ? from + by : from - by).toFixed(1));
  const light = pickOne(random, [
    'a bright light',
    'a reddish star',
    'a steady yellow light',
    'a white star',
  ]);
  return numeric({
    prompt: `Between the two stars that a mount such as ${kit.name}’s asked for it is ${deg(from)}. With a fixed zero it says: “These two disagree by ${deg(by)}”, and its tube swung too ${tooFar ? 'far' : 'short a way'}. Near the second star stands ${light}. How far from the first star must that light be, if it was centred by mistake?`,
    unit: 'degrees',
    key,
    tolerance: { mode: 'absolute', full: 0.15, zero: 1 },
    explanation: `The tube swung ${tooFar ? 'more' : 'less'} than ${deg(from)}: ${deg(from)} ${tooFar ? '+' : '−'} ${deg(by)} = ${deg(key)}.`,
    slips: [
      {
        gives: Number((tooFar ? from - by : from + by).toFixed(1)),
        reason: `The other way: it swung too ${tooFar ? 'far' : 'short a way'}.`,
      },
      { gives: by, reason: 'That is how much it differs. Asked for is the whole angle.' },
    ],
  });
}

function pointAtIt(draw: ItemDraw) {
  const { kit, a, b, lights, centred, outcome, due } = asked(draw, wellApart);
  const swung = centred.fromA > due ? 'too far' : 'not far enough';
  const spots = [centred, ...lights.filter((one) => one !== centred)].map((one) => ({
    ...chartPoint(one),
    where: `${chartWhere(one)}; ${deg(one.fromA)} from star 1`,
    reason: `From star 1 it is ${deg(one.fromA)}, ${deg(Math.abs(one.fromA - due))} ${one.fromA > due ? 'more' : 'less'} than to star 2.`,
  }));
  const [right, ...wrong] = spots;
  if (right === undefined) throw new Error('there are three lights');
  return point({
    prompt: `Star 1 was centred, then another light instead of star 2. A mount such as ${kit.name}’s, with a fixed zero, says: “${saidOf(outcome)}.” The tube swung ${swung}. From star 1 to star 2 it is ${deg(due)}. Point at the light that was centred.`,
    drawing: chartToPointAt({ a, b, lights }),
    right,
    wrong,
    explanation: `${deg(due)} were due. ${deg(centred.fromA)} fits what the mount says.`,
  });
}

/** Pairs to be swapped: opposite at equal altitude, and three others. */
function swappedUnseen({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const altitudeDeg = random.integer(6, 12) * 5;
  const azimuthDeg = random.integer(0, 7) * 45;
  const at = (turn: number, altitude: number): ChartPlace => ({
    azimuthDeg: (azimuthDeg + turn) % 360,
    altitudeDeg: altitude,
  });
  const other = altitudeDeg > 45 ? altitudeDeg - 25 : altitudeDeg + 20;
  const pairs = [
    [at(0, altitudeDeg), at(180, altitudeDeg)],
    [at(45, altitudeDeg), at(135, altitudeDeg)],
    [at(90, altitudeDeg), at(270, other)],
    [at(0, other), at(90, altitudeDeg)],
  ] as const;
  const truth = honestMount(random, { zeroDeg: 0.01, tiltDeg: 0.12, northDeg: 0.5 });
  const text = ([a, b]: (typeof pairs)[number]): string =>
    `One ${placeText(a)}; one ${placeText(b)}`;
  const told = pairs.map((pair) => {
    const [a, b] = pair;
    const outcome = outcomeOf('fixed-zero', truth, [
      { named: a, centred: b },
      { named: b, centred: a },
    ]);
    return { text: text(pair), outcome };
  });
  const [right, ...wrong] = told;
  if (right?.outcome.kind !== 'agree') throw new Error('opposite stars can be swapped unseen');
  return choice({
    prompt: `A mount such as ${kit.name}’s, with a fixed zero, notices two swapped stars because its base would lie on its side. One of these pairs it would not notice, and only a third star tells. Which?`,
    right: {
      text: right.text,
      reason:
        'Equally high and right opposite: half a turn on a level base brings each to the other.',
    },
    wrong: wrong.map((one) => ({
      text: one.text,
      reason:
        one.outcome.kind === 'base-on-its-side'
          ? `Swapped, its base would lean by ${deg(one.outcome.baseTiltDeg)}: it is noticed.`
          : 'Swapped, they would not go together: it is noticed.',
    })),
    explanation:
      'Swapping two stars asks for half a turn about the direction midway between them. Only when that is straight up does the base stay level.',
  });
}

const planetSigns = [
  {
    text: 'It shines steadily while stars nearby twinkle',
    reason: 'A planet is a tiny disc, and twinkles less.',
  },
  {
    text: 'It is not on the star chart',
    reason: 'Charts of stars leave planets out, since they wander.',
  },
  {
    text: 'In the eyepiece it is a small disc in sharp focus',
    reason: 'Stars stay points at any magnification.',
  },
  {
    text: 'It outshines every star around it',
    reason: 'Venus and Jupiter outshine all stars of the night.',
  },
] as const;
const noSigns = [
  { text: 'It is high up in the sky', reason: 'Stars and planets both can be.' },
  {
    text: 'It is the brightest, so it must be the star',
    reason: 'The brightest light is seldom the star you want.',
    misconception: 'planet-taken-for-star',
  },
  {
    text: 'The mount asked for a star, so it is one',
    reason: 'The mount cannot see what you centre.',
    misconception: 'planet-taken-for-star',
  },
  { text: 'It rose in the east', reason: 'Stars do so too.' },
] as const;

function planetOrStar({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const where = pickOne(random, ['east', 'south-east', 'south', 'south-west', 'west']);
  const right = random.shuffle(planetSigns).slice(0, random.integer(2, 3));
  return several({
    prompt: `${kit.name} asks for a star in the ${where}. A bright light stands there. What speaks for a planet?`,
    right: [...right],
    wrong: random.shuffle(noSigns).slice(0, 5 - right.length),
    explanation:
      'Steady light, a disc, not on the chart, brighter than all around: ask for another star.',
  });
}

const sure = [
  {
    text: 'Find the star on the chart, with its neighbours',
    because: 'you must know what to look for.',
  },
  {
    text: 'Find the same pattern in the sky by eye',
    because: 'an eyepiece shows no patterns: one star looks like the other.',
  },
  { text: 'Say aloud which of them is your star', because: 'a second person can still say no.' },
  {
    text: 'Put the dot on that star',
    because: 'the dot shows which star will be in the eyepiece.',
  },
  { text: 'Centre it, and confirm', because: 'done.' },
] as const;

function makeSure({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const star = pickOne(random, [
    'Castor',
    'Pollux',
    'Mirfak',
    'Alioth',
    'Elnath',
    'Regulus',
    'Hamal',
  ]);
  const steps = sure.filter((_, i) => i === 0 || i === 1 || i === 4 || random.next() < 0.7);
  return order({
    prompt: `With ${kit.name} you want ${star}, and not a neighbour of it. Put in order what you do.`,
    steps: steps.map(({ text }) => text),
    rules: steps.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: steps[index]?.because ?? '',
    })),
    explanation: 'Which star it is, is settled by eye, before dot and eyepiece.',
  });
}

/** A wrong star, a planet, two swapped: from what the mount says. */
export const wrongLights: ItemFamily = {
  id: 'wrong-lights',
  lesson: 'what-went-wrong',
  objective: 'lights',
  skill: 'diagnose',
  title: 'Which light was centred',
  version: 2,
  templates: {
    'what-was-centred': whatWasCentred,
    'how-far-it-swung': howFarItSwung,
    'point-at-it': pointAtIt,
    'swapped-unseen': swappedUnseen,
    'planet-or-star': planetOrStar,
    'make-sure': makeSure,
  },
};
