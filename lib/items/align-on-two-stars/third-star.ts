import { choice, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { afterTheMiss } from './after-the-miss';
import { apartDeg, goodPair, honestMount, missDeg, outcomeOf, somePlace } from './aligning';
import { eyepieceDrawing, fieldShapes } from './eyepiece-view';
import {
  centringRadius,
  closeUpId,
  focalText,
  observingRadius,
  radiusOf,
  someKit,
} from './kit-fields';
import { chartPoint, chartWhere, chartWords, skyChart, type ChartPlace } from './sky-chart';
import { expectText, pairText, settingFor, type Candidate } from './third-candidates';
import { angleText, arcmin, figures, placeText } from './words';
import { pickOne } from '../../variants/pick-one';

function bestThird({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const { pair, candidates } = settingFor(random, kit);
  const [best, ...others] = candidates;
  if (best === undefined) throw new Error('a setting has candidates');
  return choice({
    prompt: `${kit.name} was aligned on two stars, ${pairText(pair)}. Which third star would best show that the alignment is poor?`,
    right: {
      text: `One ${placeText(best)}`,
      reason: `There a go-to is off by ${expectText(best)} with ordinary slips, more than at any other of the four.`,
    },
    wrong: others.map((one) => ({
      text: `One ${placeText(one)}`,
      reason: `There a go-to is off by ${expectText(one)} only: slips at the two stars hardly show.`,
    })),
    explanation:
      'Beside the stars of the pair a mount is nearly always right. Errors grow away from them; check where they are large.',
  });
}

function pointAtThird({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const { pair, candidates } = settingFor(random, kit);
  const marks = [
    { ...pair[0], label: '1' },
    { ...pair[1], label: '2' },
    ...candidates.map((one) => ({ ...one, kind: 'target' as const })),
  ];
  const spot = (one: Candidate) => ({
    ...chartPoint(one),
    where: chartWhere(one),
    reason: `There a go-to is off by ${expectText(one)} with ordinary slips.`,
  });
  const [best, ...others] = candidates;
  if (best === undefined) throw new Error('a setting has candidates');
  return point({
    prompt: `${kit.name} was aligned on the stars 1 and 2. Point at the open circle where a slip in centring would show most.`,
    drawing: skyChart({ marks, alternative: chartWords(marks) }),
    right: spot(best),
    wrong: others.map(spot),
    explanation: `Slips grow away from the pair. At ${chartWhere(best)} they come to ${expectText(best)}.`,
  });
}

function verdict({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = observingRadius(kit);
  const trusts = random.next() < 0.5;
  const missArcmin = Math.round(
    trusts ? random.between(0.1, 0.55) * radius : random.between(2.4, 9) * radius,
  );
  const off = angleText(missArcmin);
  const half = arcmin(radius);
  const eyepiece = `${focalText(kit, kit.observingEyepieceId)} eyepiece`;
  const trust = {
    text: `Go on and observe: ${off} is inside the field`,
    reason: trusts
      ? `The ${eyepiece} shows ${half} to each side. Targets will mostly be in it.`
      : `It is outside: the ${eyepiece} shows ${half} to each side only.`,
    ...(trusts ? {} : { misconception: 'agreement-proves-all' as const }),
  };
  const doubt = {
    text: `Align once more: ${off} is outside the field`,
    reason: trusts
      ? `It is inside: the ${eyepiece} shows ${half} to each side.`
      : `The ${eyepiece} shows ${half} to each side. Most targets would be missed.`,
  };
  return choice({
    prompt: `After “These two agree” you check on a third star with ${kit.name}. The slew ends ${off} from it. You will observe with the ${eyepiece}. What now?`,
    right: trusts ? trust : doubt,
    wrong: [
      trusts ? doubt : trust,
      {
        text: 'Level the tripod better, then go on with the targets',
        reason: 'That moves the mount under its own alignment: then nothing is right any more.',
        misconception: 'tilt-spoils-alignment',
      },
      {
        text: `Centre this star and leave it at that`,
        reason: 'A look at a third star changes nothing in what the mount believes.',
      },
    ],
    explanation: `Compare the miss, ${off}, with half the field of the eyepiece that you observe with, ${half}.`,
  });
}

function howFarOff({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = centringRadius(kit);
  const share = pickOne(random, [0.25, 0.5, 0.75] as const);
  const angle = random.between(0, 2 * Math.PI);
  const key = share * radius;
  const narrow = radiusOf(kit, closeUpId(kit));
  const ring = { 0.25: 'first', 0.5: 'second', 0.75: 'third' }[share];
  return numeric({
    prompt: `A go-to to a third star ends like this in ${kit.name}’s ${focalText(kit, kit.centringEyepieceId)} eyepiece, ${angleText(2 * radius)} from edge to edge. The ${focalText(kit, closeUpId(kit))} eyepiece shows ${arcmin(narrow)} to each side. How far outside or inside the edge of its field would the star be?`,
    drawing: eyepieceDrawing(
      fieldShapes(
        [{ rightArcmin: key * Math.cos(angle), upArcmin: key * Math.sin(angle) }],
        radius,
        { rings: true },
      ),
      `A round field with three dashed rings, evenly spaced between middle and edge. The star sits on the ${ring} ring from the middle.`,
    ),
    unit: 'arcminutes',
    key: Number(Math.abs(key - narrow).toFixed(2)),
    tolerance: { mode: 'absolute', full: 1.5, zero: 8 },
    explanation: `The ${ring} ring is ${arcmin(key)} from the middle. The edge of the other field is at ${arcmin(narrow)}. So the star is ${arcmin(Math.abs(key - narrow))} ${key > narrow ? 'outside: not in view' : 'inside: in view'}.`,
    slips: [
      {
        gives: Number(Math.abs(2 * key - narrow).toFixed(2)),
        reason: 'You took the ring’s share of the whole width. Count from the middle.',
      },
      { gives: Number(key.toFixed(2)), reason: 'That is how far it is from the middle.' },
    ].filter(({ gives }) => Math.abs(gives - Math.abs(key - narrow)) > 3),
  });
}

function spoiltSecond({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  for (;;) {
    const [a, b] = goodPair(random);
    const slipDeg = random.integer(7, 14) / 10;
    const way = pickOne(random, [1, -1]);
    const truth = honestMount(random, {});
    const centred = { ...b, altitudeDeg: b.altitudeDeg + way * slipDeg };
    const outcome = outcomeOf('solved-zero', truth, [
      { named: a, centred: a },
      { named: b, centred },
    ]);
    if (outcome.kind !== 'agree') continue;
    const { model } = outcome;
    const places = [somePlace(random), somePlace(random), somePlace(random), a].map((place) => ({
      ...place,
      off: missDeg(model, truth, place),
    }));
    const sorted = [...places].sort((one, other) => other.off - one.off);
    const [worst, next] = sorted;
    if (worst === undefined || next === undefined || worst.off < 1.3 * next.off) continue;
    if (worst.off < 0.5 || new Set([...sorted, b].map(placeText)).size < 5) continue;
    if (sorted.some((one, i) => sorted.slice(0, i).some((other) => apartDeg(one, other) < 12)))
      continue;
    const marks = [
      { ...a, label: '1' },
      { ...b, label: '2' },
      ...sorted
        .filter((one) => apartDeg(one, a) > 1)
        .map((one) => ({ ...one, label: angleText(60 * one.off), kind: 'target' as const })),
    ];
    const text = (one: ChartPlace): string =>
      apartDeg(one, a) < 1 ? `The first star again, ${placeText(one)}` : `One ${placeText(one)}`;
    return choice({
      prompt: `With ${kit.name} the first star, ${placeText(a)}, was centred well. The second, ${placeText(b)}, was confirmed while the tube pointed ${figures(slipDeg)}° too ${way > 0 ? 'high' : 'low'}. “These two agree,” says the mount. At which star will the next go-to miss most?`,
      right: {
        text: text(worst),
        reason: `There it misses by ${angleText(60 * worst.off)}.`,
      },
      wrong: sorted.slice(1).map((one) => ({
        text: text(one),
        reason: `There it misses by ${angleText(60 * one.off)} only.`,
      })),
      explanation:
        'The mount bends its zero and its lean until both stars fit. At the first star it is nearly right. Elsewhere the slip comes out, and often larger than it went in.',
      afterwards: skyChart({
        marks,
        alternative: `The misses: ${sorted.map((one) => `${placeText(one)}, ${angleText(60 * one.off)}`).join('; ')}.`,
      }),
    });
  }
}

/** Which star to check on, and what to make of it. */
export const thirdStar: ItemFamily = {
  id: 'third-star',
  lesson: 'align-on-two-stars',
  objective: 'third',
  skill: 'align',
  title: 'Checking on a third star',
  version: 1,
  templates: {
    'best-third': bestThird,
    'point-at-third': pointAtThird,
    verdict,
    'how-far-off': howFarOff,
    'spoilt-second': spoiltSecond,
    'after-the-miss': afterTheMiss,
  },
};
