import { balanceShiftMm, togetherAsOne } from '../../balance/centre-of-mass';
import type { Random } from '../../variants/random';
import { choice, match, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { figures, grounds, one } from '../level-enough/words';
import { drawTube, grams, kilograms, partOf, pickKit, wholeOf } from './tube-case';

const rule =
  'Multiply each weight by its place, add up, and divide by all the weight: that is the balance point.';

function twoWeights({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const tubeKg = random.integer(4, 8) / 2;
  const tubeMm = random.integer(20, 34) * 10;
  const partKg = one(random, [0.5, 1, 1.5]);
  const partMm = tubeMm + (random.pick([1, -1]) ?? 1) * random.integer(8, 18) * 10;
  const { alongMm } = togetherAsOne([
    { massKg: tubeKg, alongMm: tubeMm, aboveAxisMm: 0 },
    { massKg: partKg, alongMm: partMm, aboveAxisMm: 0 },
  ]);
  return numeric({
    prompt: `A tube like ${kit.name}’s weighs ${kilograms(tubeKg)} and balances at ${String(tubeMm)} mm of its tape. At ${String(partMm)} mm you strap on a camera of ${kilograms(partKg)}. At how many millimetres does it all balance now?`,
    unit: 'millimetres',
    key: alongMm,
    tolerance: { mode: 'absolute', full: 3, zero: 25 },
    explanation: `${rule} (${figures(tubeKg, 1)} × ${String(tubeMm)} + ${figures(partKg, 1)} × ${String(partMm)}) ÷ ${figures(tubeKg + partKg, 1)} is ${figures(alongMm)}.`,
    slips: [
      {
        gives: (tubeMm + partMm) / 2,
        reason: 'That is halfway between them, as if both weighed the same.',
        misconception: 'middle-is-balance' as const,
      },
      { gives: tubeMm, reason: 'That is the tube alone. The camera counts too.' },
      {
        gives: Math.round(tubeMm + (partKg * (partMm - tubeMm)) / tubeKg),
        reason: 'You divided by the tube’s weight. Divide by all the weight, the camera’s too.',
      },
    ].filter(({ gives }) => Math.abs(gives - alongMm) > 4),
  });
}

const extras = ['phone-adapter', 'dew-shield'] as const;

function howFarItMoves({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { kit, whole } = tube;
  const part = partOf(kit, one(random, extras));
  const shift = balanceShiftMm(whole, { massKg: part.massKg, alongMm: part.fromFrontMm });
  const key = Math.abs(shift);
  const away = Math.abs(part.fromFrontMm - whole.alongMm);
  return numeric({
    prompt: `${kit.name} with all that is on it weighs ${kilograms(whole.massKg)} and balances at ${String(tube.balanceMm)} mm. The ${part.name}, ${grams(part.massKg)}, goes on ${figures(away)} mm from there. How far does the balance point move?`,
    unit: 'millimetres',
    key,
    tolerance: { mode: 'relative', full: 0.08, zero: 0.5 },
    explanation: `The part’s weight times its distance, divided by all the weight: ${figures(part.massKg, 2)} × ${figures(away)} ÷ ${figures(whole.massKg + part.massKg, 2)} is ${figures(key)} mm, towards the part.`,
    slips: [
      {
        gives: Math.round(away),
        reason:
          'So far away is the part. It weighs little beside the tube, so the point moves little.',
      },
      {
        gives: Number((part.massKg * away).toFixed(0)),
        reason: 'That is weight times distance. Divide by all the weight, the part’s too.',
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 0.12 * key),
  });
}

/** Readings of the tape at which either end just begins to sink. */
const edges = (random: Random) => {
  const balanceMm = random.integer(180, 340);
  const edgeMm = random.integer(7, 16);
  return { balanceMm, edgeMm, front: balanceMm + edgeMm, back: balanceMm - edgeMm };
};

function betweenTheEdges({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const { balanceMm, front, back } = edges(random);
  return choice({
    prompt: `Nobody knows what the parts on ${kit.name} weigh. Level, its front just begins to sink with the clamp at ${String(front)} mm, its back with the clamp at ${String(back)} mm. Where does it balance?`,
    explanation:
      'The clutch takes the same pull either way, so the balance point is halfway between the two places.',
    right: {
      text: `At ${String(balanceMm)} mm, halfway between the two`,
      reason: 'As far from the one edge as from the other.',
    },
    wrong: [
      {
        text: `At ${String(front)} mm, where the front lets go`,
        reason: 'There the front sinks: it is heavy by as much as the clutch can take.',
      },
      {
        text: `At ${String(back)} mm, where the back lets go`,
        reason: 'There the back sinks: it is heavy by as much as the clutch can take.',
      },
      {
        text: `At ${String(Math.round(kit.tube.lengthMm / 2) + (Math.round(kit.tube.lengthMm / 2) === balanceMm ? 20 : 0))} mm, near the middle`,
        reason: 'The middle of the tube says nothing about its weights.',
        misconception: 'middle-is-balance',
      },
    ],
  });
}

function matchShifts({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const massKg = random.integer(18, 40) / 10;
  const partKg = random.integer(2, 5) / 10;
  const places = random.shuffle([60, 120, 180, 240]).slice(0, 3);
  const shift = (mm: number) =>
    balanceShiftMm({ massKg, alongMm: 0, aboveAxisMm: 0 }, { massKg: partKg, alongMm: mm });
  return match({
    prompt: `A tube, as heavy as ${kit.name} with ${kilograms(massKg)} in all, gets a weight of ${grams(partKg)}. How far does its balance point move when the weight sits so far from it?`,
    explanation: `Twice the distance, twice the shift. It is always less than the distance, as the tube is heavier: ${grams(partKg)} of ${kilograms(massKg + partKg)} in all.`,
    pairs: places.map((mm) => ({
      left: `Weight ${String(mm)} mm away`,
      right: `${figures(shift(mm), 1)} mm`,
      reason: `${figures(partKg, 1)} × ${String(mm)} ÷ ${figures(massKg + partKg, 1)}.`,
    })),
    spare: [`${String(Math.max(...places))} mm`],
  });
}

function mostShift({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const whole = wholeOf(kit);
  const ids = ['phone-adapter', 'dew-shield', 'eyepiece-9'] as const;
  const parts = ids
    .map((id) => partOf(kit, id))
    .map((part) => ({
      part: { ...part, massKg: Math.round(part.massKg * random.integer(85, 115)) / 100 },
    }))
    .map(({ part }) => ({
      part,
      mm: Math.abs(balanceShiftMm(whole, { massKg: part.massKg, alongMm: part.fromFrontMm })),
      awayMm: Math.round(Math.abs(part.fromFrontMm - whole.alongMm)),
    }))
    .sort((a, b) => a.mm - b.mm);
  return order({
    prompt: `${kit.name}, ${kilograms(whole.massKg)} with all that is on it, stands ${one(random, grounds)}. Which of these moves its balance point least, which most? Begin with the least.`,
    explanation: `Weight times distance decides. ${parts.map(({ part, mm }) => `${part.name}: ${figures(mm)} mm`).join('; ')}.`,
    steps: parts.map(
      ({ part, awayMm }) => `${part.name}, ${grams(part.massKg)}, ${String(awayMm)} mm away`,
    ),
    rules: parts.slice(1).map(({ mm }, index) => ({
      first: index,
      then: index + 1,
      reason: `it moves the point by ${figures(parts[index]?.mm ?? 0)} mm against ${figures(mm)} mm.`,
    })),
  });
}

/** Weights and places reckoned into one. */
export const balancePoint: ItemFamily = {
  id: 'balance-point',
  lesson: 'tube-on-and-balanced',
  objective: 'point',
  skill: 'balance',
  title: 'Where it all balances',
  version: 2,
  templates: {
    'two-weights': twoWeights,
    'how-far-it-moves': howFarItMoves,
    'between-the-edges': betweenTheEdges,
    'match-shifts': matchShifts,
    'most-shift': mostShift,
  },
};
