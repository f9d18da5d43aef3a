import { lightPast } from '../../optics/light-gathered';
import { lightTrain } from '../../optics/light-path';
import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { someTube } from './item-tube';
import { starRays } from '../../optics/light-rays';
import { askers } from './askers';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawTube, type DrawnTube } from '../../drawings/tube-drawing';

const targets = [
  'the Moon',
  'Jupiter',
  'a street lamp far away',
  'a church clock',
  'Saturn',
] as const;
const covers: readonly [Cover, ...Cover[]] = [
  { share: 1 / 3, words: 'the upper third' },
  { share: 0.5, words: 'the upper half' },
  { share: 2 / 3, words: 'the upper two thirds' },
];
type Cover = { share: number; words: string };

/** The card comes down by a share of the width. */
const cardAt = ({ apertureMm }: DrawnTube, share: number): number => apertureMm * (0.5 - share);
const percentLeft = (tube: DrawnTube, share: number): number =>
  100 *
  lightPast({
    apertureMm: tube.apertureMm,
    shadowRadiusMm: lightTrain(tube).shadowRadiusMm,
    cardDownToMm: cardAt(tube, share),
  });
const tens = (percent: number): string => String(5 * Math.round(percent / 5));

function whatYouSee(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const target = pickOne(random, targets);
  const { share, words } = pickOne(random, covers);
  const left = percentLeft(tube, share);
  const drawn = drawTube(tube, {
    facing: 'left',
    rays: starRays(tube, { cardDownToMm: cardAt(tube, share) }),
    cardDownToMm: cardAt(tube, share),
  });
  const { width, height, shapes } = drawn;
  const meets = `The lines that pass the card still meet in the one focus, and about ${tens(left)}% of the light is left.`;
  return choice({
    prompt: `${tube.name} looks at ${target}. A piece of card covers ${words} of its front. What do you see?`,
    explanation: `Every part of the front sends light to every part of the picture. ${meets}`,
    afterwards: {
      width,
      height,
      shapes,
      alternative: `${tube.name} cut open, the card before its front. ${meets}`,
    },
    right: {
      text: `All of ${target}, as large as before, at about ${tens(left)}% of the light`,
      reason: `${meets} The picture is whole, only dimmer.`,
    },
    wrong: [
      {
        text: 'Its lower part only, as bright as before; the rest is cut off',
        reason: `The card stands far from the focus, so it cuts off no part of the picture. It takes light: about ${tens(left)}% is left.`,
        misconception: 'half-covered-half-picture',
      },
      {
        text: 'All of it, as bright as before, but smaller in the eyepiece',
        reason:
          'How large it looks goes by focal length and eyepiece. The card changes neither, but takes light.',
      },
      {
        text: 'Nothing at all: the light needs the whole of the front',
        reason: `The light that passes the card goes on as if it were not there: about ${tens(left)}% of it.`,
      },
    ],
  });
}

function holeInTheCap({ random }: ItemDraw) {
  const aperture = pickOne(random, [60, 70, 80, 90, 100, 120]);
  const hole = Math.round(aperture * pickOne(random, [0.3, 0.4, 0.5, 0.6, 0.7]));
  const key = (100 * hole ** 2) / aperture ** 2;
  return numeric({
    prompt: `A lens ${String(aperture)} mm wide wears a cap with a round hole of ${String(hole)} mm. How much of the light passes?`,
    unit: 'per cent',
    key,
    tolerance: { mode: 'absolute', full: 2, zero: 10 },
    explanation: `Light goes by area, and area by the square of the width: (${String(hole)} ÷ ${String(aperture)})² is ${String(Math.round(key))}%.`,
    slips: [
      {
        gives: Math.round((100 * hole) / aperture),
        reason: 'That compares the widths. Light comes in through an area, so square the ratio.',
        misconception: 'light-goes-by-width',
      },
    ],
  });
}

function whatChanges({ random }: ItemDraw) {
  const target = pickOne(random, targets);
  const { words } = pickOne(random, covers);
  const right = [
    { text: `How bright ${target} looks`, reason: 'Less of the front gathers less light.' },
    { text: 'How long a photograph must be exposed', reason: 'Less light takes longer.' },
    { text: 'How faint a star you can still see', reason: 'Less light, fewer faint stars.' },
    { text: 'How much light there is for your eye', reason: 'The card takes its share of it.' },
  ];
  const wrong = [
    {
      text: `How much of ${target} is in the picture`,
      reason: 'All of it stays: each part of the front makes the whole picture.',
      misconception: 'half-covered-half-picture' as const,
    },
    { text: `How large ${target} looks`, reason: 'That goes by focal length and eyepiece.' },
    { text: 'Where the focus lies', reason: 'The other lines still meet where they met before.' },
    { text: 'Which way up the picture is', reason: 'That goes by mirrors and prism.' },
  ];
  return several({
    prompt: `A card covers ${words} of a telescope’s front while it looks at ${target}. Tick all that changes.`,
    explanation:
      'A card before the front takes light away, and nothing else that one would notice.',
    right: pickSome(random, right, 2),
    wrong: pickSome(random, wrong, 3),
  });
}

function dimToBright({ random }: ItemDraw) {
  const fronts = [50, 60, 80, 100, 120, 150].flatMap((aperture) => [
    { text: `${String(aperture)} mm wide, open`, light: aperture ** 2 },
    { text: `${String(aperture)} mm wide, half of it under a card`, light: aperture ** 2 / 2 },
  ]);
  // Drawn apart by a quarter at least, so that nobody has to split hairs.
  const chosen = random
    .shuffle(fronts)
    .reduce<typeof fronts>(
      (kept, next) =>
        kept.length < 4 &&
        kept.every(({ light }) => Math.max(light, next.light) / Math.min(light, next.light) > 1.25)
          ? [...kept, next]
          : kept,
      [],
    );
  const sorted = chosen.sort((a, b) => a.light - b.light);
  return order({
    prompt: `${pickOne(random, askers)} holds four front lenses up to one star. Put them in order, from the least light to the most.`,
    explanation: 'Light goes by open area: square the width, and halve it under half a card.',
    steps: sorted.map(({ text }) => `A lens ${text}`),
    rules: sorted.slice(1).map(({ light }, index) => ({
      first: index,
      then: index + 1,
      reason: `it passes ${(light / (sorted[index]?.light ?? light)).toFixed(1)} times less light; compare width × width.`,
    })),
  });
}

export const cardOverTheFront: ItemFamily = {
  id: 'card-over-the-front',
  lesson: 'what-is-in-the-case',
  objective: 'gather',
  skill: 'kit',
  title: 'What a covered front does to the picture',
  version: 1,
  templates: {
    'what-you-see': whatYouSee,
    'hole-in-the-cap': holeInTheCap,
    'what-changes': whatChanges,
    'dim-to-bright': dimToBright,
  },
};
