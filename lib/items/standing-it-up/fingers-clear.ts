import { caughtUpToMm, fingerMm, gapMm, squeezeN } from '../../assembly/pinch';
import { asWeightKg } from '../../assembly/stability';
import { choice, match, numeric, order, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askedSpot, type KnownSpot } from '../what-is-in-the-case/asked-spot';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne } from '../../variants/pick-one';
import { drawLegs, type LegsPlace } from '../../drawings/legs-drawing';

const mm = (value: number): string => `${String(Math.round(value))} mm`;
const whole = (value: number): string => String(Math.round(value));

function howHardItSqueezes({ random }: ItemDraw) {
  const legMm = 100 * random.integer(7, 12);
  const fromMm = 10 * random.integer(3, 12);
  const pushKg = random.integer(2, 5);
  const key = squeezeN(pushKg, legMm, fromMm);
  return numeric({
    prompt: `A leg ${mm(legMm)} long is folded with a push of ${String(pushKg)} kg at its foot. A finger is between the legs, ${mm(fromMm)} from the joint. With how many kilograms’ worth is it squeezed?`,
    unit: 'kg',
    key,
    tolerance: { mode: 'relative', full: 0.05, zero: 0.3 },
    explanation: `The leg is a lever: ${String(pushKg)} kg × ${String(legMm)} mm ÷ ${String(fromMm)} mm is ${whole(key)} kg. Near the joint a light push is a heavy squeeze.`,
    slips: [
      {
        gives: pushKg,
        reason:
          'So much you would feel at the foot. Near the joint the lever multiplies it many times.',
        misconception: 'light-push-light-pinch',
      },
    ],
  });
}

function whereItIsSafe({ random }: ItemDraw) {
  const fromDeg = random.integer(18, 26);
  const toDeg = random.integer(3, 8);
  const caught = caughtUpToMm(toDeg);
  const above = 10 * Math.max(3, Math.round((caught * 0.55) / 10));
  const far = 10 * Math.round((caught * 1.9) / 10);
  const leg = Math.round((caught * 3.2) / 100) * 100 + 400;
  const at = (place: number) => `${mm(place)} from the joint`;
  const gap = (place: number) => mm(gapMm(place, toDeg));
  const tight = (place: number) => ({
    text: at(place),
    reason: `At ${String(toDeg)}° only ${gap(place)} are left there, and a finger is about ${mm(fingerMm)} thick: it is caught.`,
  });
  return choice({
    prompt: `The legs, each ${mm(leg)} long, swing from ${String(fromDeg)}° to ${String(toDeg)}° from upright. Of these places between two legs, where is there still room for a finger of ${mm(fingerMm)}?`,
    explanation: `The gap grows with the distance from the joint. At ${String(toDeg)}° a finger is caught anywhere nearer than ${mm(caught)}. Best of all, hold a leg from outside.`,
    right: {
      text: at(far),
      reason: `At ${String(toDeg)}° ${gap(far)} are left there. Even so: hold a leg from outside.`,
    },
    wrong: [
      tight(above),
      tight(Math.round(above / 2)),
      tight(10 * Math.round((caught * 0.8) / 10) + 1),
    ],
  });
}

const places: Readonly<Record<LegsPlace, { where: string; reason: string }>> = {
  joint: {
    where: 'just below the head, between the tops of the legs',
    reason: 'Here the legs come together first, and the long lever squeezes hardest.',
  },
  spreader: {
    where: 'at the bend of the bars that join the legs',
    reason:
      'The spreader’s bars close like scissors. Press on its middle with a flat hand from above.',
  },
  lock: {
    where: 'on the outside of the right leg, two thirds of the way down',
    reason: 'That is a leg lock. It is worked with the fingers from outside, and stands still.',
  },
  foot: {
    where: 'at the lower end of the left leg',
    reason: 'The feet are farthest apart: nothing closes on a finger there, only toes mind.',
  },
  head: {
    where: 'on top of the head',
    reason: 'The top of the head is where a hand steadies the tripod: nothing closes there.',
  },
};
const questions = [
  {
    is: 'joint',
    ask: 'Point at where folding legs squeeze hardest.',
    only: ['joint', 'lock', 'foot', 'head'],
  },
  {
    is: 'spreader',
    ask: 'Point at the part that closes like scissors.',
    only: ['spreader', 'lock', 'foot', 'head'],
  },
  {
    is: 'head',
    ask: 'Point at where a second hand steadies the tripod, clear of all that folds.',
    only: ['joint', 'spreader', 'foot', 'head'],
  },
  {
    is: 'lock',
    ask: 'Point at what must be closed so that the leg does not run in.',
    only: ['joint', 'spreader', 'foot', 'lock'],
  },
] as const satisfies readonly { is: LegsPlace; ask: string; only: readonly LegsPlace[] }[];

function pointAtThePinch({ random }: ItemDraw) {
  const splayDeg = random.integer(14, 30);
  const { is, ask, only } = pickOne<(typeof questions)[number]>(random, [...questions]);
  const { width, height, shapes, spots } = drawLegs(splayDeg);
  // Head and joint lie close together: never both in one drawing's rings.
  const shown = only.filter(
    (place) => !(place === 'joint' && is === 'head') && !(place === 'head' && is === 'joint'),
  );
  const known: KnownSpot<LegsPlace>[] = shown.map((place) => ({
    is: place,
    ...spots[place],
    ...places[place],
  }));
  return point({
    prompt: `A tripod is being folded. ${ask}`,
    drawing: {
      width,
      height,
      shapes,
      alternative: `Two legs of a tripod from the side, ${String(splayDeg)}° from upright. They hang from a head. Two bars that bend in the middle join them a little below halfway. On each leg sits a catch, two thirds of the way down.`,
    },
    explanation: 'Hold a leg from outside and by its lower part, and steady the head from above.',
    ...askedSpot(known, is),
  });
}

function hardestLast({ random }: ItemDraw) {
  const legMm = 100 * random.integer(8, 12);
  const from = random
    .shuffle([30, 50, 80, 130, 220, 400, 600])
    .slice(0, 4)
    .sort((a, b) => b - a);
  return order({
    prompt: `${pickOne(random, askers)} folds a leg of ${mm(legMm)} with a push of 2 kg at the foot. Put these places between the legs in order, from the gentlest squeeze to the hardest.`,
    explanation: 'The nearer to the joint, the harder: the leg is a lever.',
    steps: from.map((place) => `${mm(place)} from the joint`),
    rules: from.slice(1).map((place, index) => ({
      first: index,
      then: index + 1,
      reason: `there it is ${whole(asWeightKg(squeezeN(2 * 9.80665, legMm, from[index] ?? place)))} kg, nearer to the joint ${whole(asWeightKg(squeezeN(2 * 9.80665, legMm, place)))} kg.`,
    })),
  });
}

function whatIsLeft({ random }: ItemDraw) {
  const place = 10 * random.integer(6, 30);
  const angles = random.shuffle([2, 4, 7, 11, 16, 24]).slice(0, 4);
  return match({
    prompt: `${pickOne(random, askers)} folds a tripod. Two legs close over a spot ${mm(place)} from the joint. How much room is left there at each angle from upright?`,
    explanation: `As the legs close, the room goes in step with the angle. A finger of ${mm(fingerMm)} is caught as soon as less is left.`,
    pairs: angles.map((angle) => ({
      left: `${String(angle)}°`,
      right: `${gapMm(place, angle).toFixed(0)} mm`,
      reason: `the gap is 1.73 × ${String(place)} mm × sin ${String(angle)}°.`,
    })),
  });
}

export const fingersClear: ItemFamily = {
  id: 'fingers-clear',
  lesson: 'standing-it-up',
  objective: 'pinch',
  skill: 'safety',
  title: 'Where folding legs pinch',
  version: 1,
  templates: {
    'how-hard-it-squeezes': howHardItSqueezes,
    'where-it-is-safe': whereItIsSafe,
    'point-at-the-pinch': pointAtThePinch,
    'hardest-last': hardestLast,
    'what-is-left': whatIsLeft,
  },
};
