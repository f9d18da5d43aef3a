import { headSlope, tiltOf } from '../../levelling/head-slope';
import { takenAsLevel, tiltConsequences, type SkyPlace } from '../../levelling/tilt-consequences';
import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { figures, grounds, one } from './words';

const opposites = [
  ['north', 'south'],
  ['east', 'west'],
  ['north-east', 'south-west'],
  ['south-east', 'north-west'],
] as const;

/** Two stars a quarter of the sky apart: any good pair does. */
const pair: readonly [SkyPlace, SkyPlace] = [
  { azimuthDeg: 100, altitudeDeg: 45 },
  { azimuthDeg: 190, altitudeDeg: 35 },
];

const absorbed =
  'Two stars show the computer how the base really stands, and from then on it reckons with the slope.';

const sunkTiltDeg = (radiusMm: number, sinksMm: number): number =>
  tiltOf(
    headSlope(
      radiusMm,
      [0, 120, 240].map((azimuthDeg, index) => ({
        azimuthDeg,
        heightMm: index === 0 ? -sinksMm : 0,
      })),
    ),
  ).tiltDeg;

function whatIsLeft({ random, world }: ItemDraw) {
  const tiltDeg = random.integer(3, 30) / 10;
  const t = Math.round(60 * tiltDeg);
  const kit = random.pick(world.kits);
  if (kit === undefined) throw new Error('a world has telescopes');
  const { afterTwoStarsArcmin } = tiltConsequences({ tiltDeg, risesTowardsDeg: 70 }, ...pair);
  if (afterTwoStarsArcmin === null || afterTwoStarsArcmin > 0.01)
    throw new Error('a small tilt is gone after two stars');
  const rights = [
    `Nothing that ${kit.name} could show: under 0.01′`,
    `Less than a hundredth of an arcminute`,
    `Next to nothing, whatever way ${kit.name} looks`,
    `Nothing: ${kit.name} lands as on a level base`,
  ] as const;
  return choice({
    prompt: `The base stood ${figures(tiltDeg, 1)}° off level ${one(random, grounds)}. ${kit.name} was then aligned on two good stars, and nothing has moved since. How far off do its go-tos land because of the lean?`,
    explanation: `${absorbed} What it leaves is less than 0.001′ for each degree.`,
    right: { text: one(random, rights), reason: absorbed },
    wrong: [
      {
        text: `By ${String(t)}′, as before the alignment`,
        reason: `That was so for the first slews. ${absorbed}`,
        misconception: 'tilt-spoils-alignment',
      },
      {
        text: `By about ${String(Math.round(t / 2))}′: one star takes half of it`,
        reason: `Nothing of it stays. ${absorbed}`,
        misconception: 'tilt-spoils-alignment',
      },
      {
        text: `By up to ${String(2 * t)}′ on the far side of the sky`,
        reason:
          'That is what a computer does that takes its base as level and is set right on one star.',
      },
    ],
  });
}

function whatSpoils({ random }: ItemDraw) {
  const mm = random.integer(8, 20);
  const tenths = random.integer(3, 15) / 10;
  const after = [
    {
      text: `A foot sinks ${String(mm)} mm into the turf`,
      reason:
        'The base leans another way than when the stars were shown. Nobody tells the computer.',
    },
    {
      text: `Someone stumbles over a leg and it stands ${String(mm)} mm farther out`,
      reason: 'The base has turned and leans. What the computer learnt is no longer so.',
    },
    {
      text: `A leg lock slips by ${String(mm)} mm`,
      reason: 'The head leans now, and the alignment was made for another lean.',
    },
    {
      text: `You make the base level by a last ${String(mm)} mm of one leg`,
      reason: 'Level or not: after the alignment every change of the base is an error of its own.',
    },
  ];
  const before = [
    {
      text: `The base was ${figures(tenths, 1)}° off level all the time`,
      reason: absorbed,
      misconception: 'tilt-spoils-alignment' as const,
    },
    {
      text: `The bubble stood ${figures(2 * tenths, 1)} mm off before the first star`,
      reason: `${figures(2 * tenths, 1)} mm are ${figures(tenths, 1)}°, and the two stars took that out.`,
      misconception: 'tilt-spoils-alignment' as const,
    },
    {
      text: `One leg was set ${String(5 * mm)} mm longer than the others before the first star`,
      reason:
        'On sloping ground it must be. Only the head has to be level, and about level will do.',
    },
  ];
  const rights = random.shuffle(after).slice(0, 2);
  const wrongs = random.shuffle(before).slice(0, 2);
  return several({
    prompt: `${one(random, ['Wren', 'Heron', 'Owl'])} was aligned well on two stars ${one(random, grounds)}. Which of these spoil the go-tos that follow?`,
    explanation:
      'What was so while the stars were shown is taken into account. What changes afterwards is not.',
    right: rights,
    wrong: wrongs,
  });
}

function sinksAfterwards({ random }: ItemDraw) {
  const radiusMm = one(random, [360, 400, 450, 500, 550]);
  const perDeg = 1.5 * radiusMm * Math.tan(Math.PI / 180);
  const sinksMm = random.integer(5, 20);
  const key = 60 * sunkTiltDeg(radiusMm, sinksMm);
  const field = one(random, [27, 54, 75]);
  return numeric({
    prompt: `Aligned ${one(random, grounds)}, and then one foot sinks by ${String(sinksMm)} mm. On this tripod ${figures(perDeg)} mm of height under one foot are one degree. How many arcminutes off are the go-tos at worst?`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'relative', full: 0.1, zero: 0.4 },
    explanation: `${String(sinksMm)} ÷ ${figures(perDeg)} is ${figures(sinksMm / perDeg, 2)}°, times 60 about ${figures(key)}′. An eyepiece that shows ${String(field)}′ to each side ${key > field ? 'loses' : 'still holds'} such a target. No alignment takes that out but a new one.`,
    slips: [
      {
        gives: Number((sinksMm / perDeg).toFixed(2)),
        reason: 'Those are degrees. One degree is 60 arcminutes.',
      },
      {
        gives: 0,
        reason:
          'Two stars take out what was so before. This came afterwards, and nobody knows of it.',
        misconception: 'level-afterwards',
      },
    ],
  });
}

function mostHarm({ random }: ItemDraw) {
  const tiltDeg = random.integer(6, 14) / 10;
  const littleMm = random.integer(2, 4);
  const muchMm = random.integer(9, 14);
  const radiusMm = 450;
  const risesTowardsDeg = 45 * random.integer(0, 7);
  const stars: readonly [SkyPlace, SkyPlace] = [
    { azimuthDeg: risesTowardsDeg, altitudeDeg: 40 },
    { azimuthDeg: risesTowardsDeg + 90, altitudeDeg: 40 },
  ];
  const worst = (deg: number) => tiltConsequences({ tiltDeg: deg, risesTowardsDeg }, ...stars);
  const tilts = [
    {
      text: `Base ${figures(tiltDeg, 1)}° off level, then aligned on two stars`,
      arcmin: worst(tiltDeg).afterTwoStarsArcmin ?? 0,
    },
    {
      text: `Aligned, then a foot sinks ${String(littleMm)} mm`,
      arcmin: 60 * sunkTiltDeg(radiusMm, littleMm),
    },
    {
      text: `Aligned, then a foot sinks ${String(muchMm)} mm`,
      arcmin: 60 * sunkTiltDeg(radiusMm, muchMm),
    },
    {
      text: `Base ${figures(2 * tiltDeg, 1)}° off, and the computer takes it as level`,
      arcmin: worst(2 * tiltDeg).takenAsLevelArcmin,
    },
  ].sort((a, b) => a.arcmin - b.arcmin);
  const size = (arcmin: number) => (arcmin < 1 ? 'under 1′' : `up to ${figures(arcmin)}′`);
  return order({
    prompt: `Four evenings ${one(random, grounds)}; on this tripod 12 mm of height under a foot are one degree. Which spoils the go-tos least, which most? Begin with the least.`,
    explanation: `At worst: ${tilts.map(({ text, arcmin }) => `${text.toLowerCase()}, ${size(arcmin)}`).join('; ')}.`,
    steps: tilts.map(({ text }) => text),
    rules: tilts.slice(1).map(({ arcmin }, index) => ({
      first: index,
      then: index + 1,
      reason: `${size(tilts[index]?.arcmin ?? 0)} against ${size(arcmin)}.`,
    })),
  });
}

function takenForLevel({ random }: ItemDraw) {
  const tiltDeg = random.integer(3, 9) / 10;
  const [high, low] = random.shuffle(one(random, opposites));
  if (high === undefined || low === undefined) throw new Error('a line has two ends');
  const setOnHigh = random.next() < 0.5;
  const altitudeDeg = random.integer(25, 40);
  const at = (onHigh: boolean): SkyPlace => ({ azimuthDeg: onHigh ? 90 : 270, altitudeDeg });
  const { upArcmin } = takenAsLevel(
    { tiltDeg, risesTowardsDeg: 90 },
    at(setOnHigh),
    at(!setOnHigh),
  );
  const t = 60 * tiltDeg;
  const [first, second] = setOnHigh ? [high, low] : [low, high];
  return numeric({
    prompt: `This computer never doubts that its base is level, and the base stands ${figures(tiltDeg, 1)}° high in the ${high}. It was set right on one star in the ${first}. How far too high does it land on a star in the ${second}, just as high up? Write a minus for too low.`,
    unit: 'arcminutes',
    key: upArcmin,
    tolerance: { mode: 'absolute', full: 5, zero: 25 },
    explanation: `Setting it right in the ${first} shifts its circle by the ${figures(t)}′ that were wrong there. In the ${second} ${figures(t)}′ are wrong the other way, and the shift comes on top: ${figures(Math.abs(upArcmin))}′ too ${upArcmin > 0 ? 'high' : 'low'}.`,
    slips: [
      {
        gives: 0,
        reason: 'One star shifts the circles; it does not tell how the base leans. That takes two.',
        misconception: 'one-star-levels',
      },
      {
        gives: Math.round(upArcmin > 0 ? t : -t),
        reason: `That is the tilt alone. The shift made in the ${first} is as large, and comes on top.`,
      },
      {
        gives: Math.round(-upArcmin),
        reason: `The other way: the ${second} is the ${setOnHigh ? 'low' : 'high'} side.`,
      },
    ],
  });
}

/** What an alignment takes out of a lean, and what it cannot. */
export const afterTheAlignment: ItemFamily = {
  id: 'after-the-alignment',
  lesson: 'level-enough',
  objective: 'enough',
  skill: 'level',
  title: 'How level is level enough',
  version: 2,
  templates: {
    'what-is-left': whatIsLeft,
    'what-spoils': whatSpoils,
    'sinks-afterwards': sinksAfterwards,
    'most-harm': mostHarm,
    'taken-for-level': takenForLevel,
  },
};
