import { capitalised } from '../../wording/capital';
import { balanceShiftMm } from '../../balance/centre-of-mass';
import { creepFrom } from '../../balance/creep';
import { clampedAt } from '../../balance/torque';
import type { TubePartId } from '../../variants/bench/bench-kit';
import { choice, match, numeric, several } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { figures, grounds, one } from '../level-enough/words';
import { drawTube, grams, partOf, pickKit, wholeOf } from './tube-case';
import { tubeDrawing } from './tube-drawing';

const extras: readonly TubePartId[] = ['phone-adapter', 'dew-shield'];

/** How far a part moves the balance point; towards the back is positive. */
const shiftOf = (kit: ItemKit, id: TubePartId): number => {
  const part = partOf(kit, id);
  return balanceShiftMm(wholeOf(kit), { massKg: part.massKg, alongMm: part.fromFrontMm });
};

function phoneWithNoHand({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { kit, whole, holdingTorqueNm, balanceMm } = tube;
  const part = partOf(kit, one(random, extras));
  const all = wholeOf(kit, [part.id]);
  // The tube of this question is a little off its kind's; so is the whole with the part on.
  const loaded = { ...all, alongMm: all.alongMm + (whole.alongMm - wholeOf(kit).alongMm) };
  const { moves } = creepFrom(clampedAt(loaded, balanceMm), 0, holdingTorqueNm);
  const shift = Math.round(Math.abs(loaded.alongMm - balanceMm));
  const sinks = (end: 'front' | 'back') => `Its ${end} sinks, on an arm of ${String(shift)} mm`;
  const end = part.fromFrontMm > balanceMm ? 'back' : 'front';
  const other = end === 'back' ? 'front' : 'back';
  const holds = `It stays: ${String(shift)} mm is less than the clutch takes`;
  return choice({
    prompt: `${kit.name} hangs level and balanced at ${String(balanceMm)} mm. Its clutch takes ${String(tube.edgeMm)} mm either way. With no hand on the tube somebody puts on the ${part.name}: ${grams(part.massKg)} at ${figures(part.fromFrontMm)} mm of the tape. What happens?`,
    drawing: tubeDrawing({ kit, clampMm: balanceMm, balanceMm }),
    afterwards: tubeDrawing({
      kit,
      clampMm: balanceMm,
      balanceMm: Math.round(loaded.alongMm),
      frontDownDeg: moves === 'holds' ? 0 : moves === 'front' ? 12 : -12,
    }),
    explanation: `The balance point moves by ${String(shift)} mm towards the ${end}, and the clutch takes ${String(tube.edgeMm)} mm. A hand stays on the tube while anything goes on or comes off.`,
    right:
      moves === 'holds'
        ? { text: holds, reason: 'This time. A hand on the tube costs nothing, all the same.' }
        : {
            text: sinks(moves),
            reason: `The part sits at the ${moves}, and pulls harder than the clutch holds.`,
          },
    wrong: [
      {
        text: sinks(other),
        reason: `The part sits on the ${end} side of the clamp. The ${other} gets lighter beside it.`,
      },
      moves === 'holds'
        ? {
            text: sinks(end),
            reason: `The balance point moves by ${String(shift)} mm only, and the clutch takes ${String(tube.edgeMm)} mm.`,
          }
        : {
            text: `It stays: it was balanced before`,
            reason: 'It was balanced without that part.',
            misconception: 'balance-it-bare' as const,
          },
      {
        text: `It stays: ${grams(part.massKg)} is nothing beside the tube`,
        reason: `Far out even a little weight counts: it moves the balance point by ${String(shift)} mm.`,
      },
    ],
  });
}

function thenSlide({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { kit, whole, balanceMm } = tube;
  const part = partOf(kit, one(random, extras));
  const key = balanceShiftMm(whole, { massKg: part.massKg, alongMm: part.fromFrontMm });
  const way = key > 0 ? 'forward' : 'back';
  return numeric({
    prompt: `${kit.name} (${figures(whole.massKg, 2)} kg with all on it) is clamped at its balance point, ${String(balanceMm)} mm. Now the ${part.name} goes on at ${figures(part.fromFrontMm)} mm, ${grams(part.massKg)}. How many millimetres must the tube slide ${way}?`,
    drawing: tubeDrawing({ kit, clampMm: balanceMm, balanceMm }),
    unit: 'millimetres',
    key: Math.abs(key),
    tolerance: { mode: 'relative', full: 0.1, zero: 0.5 },
    explanation: `${figures(part.massKg, 2)} × ${figures(Math.abs(part.fromFrontMm - whole.alongMm))} ÷ ${figures(whole.massKg + part.massKg, 2)} is ${figures(Math.abs(key))} mm. The part makes the ${key > 0 ? 'back' : 'front'} heavier, so the tube slides ${way}.`,
    slips: [
      {
        gives: Math.round(Math.abs(part.fromFrontMm - whole.alongMm)),
        reason: 'That is how far the part sits from the clamp. The balance point moves much less.',
      },
      {
        gives: 0,
        reason: 'It was balanced without the part. With it, it is not.',
        misconception: 'balance-it-bare',
      },
    ],
  });
}

const names: Readonly<Partial<Record<TubePartId, string>>> = {
  'phone-adapter': 'a phone at the eyepiece',
  'dew-shield': 'a dew shield',
  finder: 'the red dot finder',
  'eyepiece-25': 'the 25 mm eyepiece',
  prism: 'the erecting prism',
  diagonal: 'the star diagonal',
};

/** Parts of a kit that plainly weigh on one end: 25 mm or more from the balance point. */
const tellingParts = (kit: ItemKit) =>
  kit.parts.filter(
    ({ id, fromFrontMm }) =>
      names[id] !== undefined && Math.abs(fromFrontMm - wholeOf(kit).alongMm) >= 25,
  );

function whichMakeHeavier({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const whole = wholeOf(kit);
  const end = one(random, ['front', 'back'] as const);
  // A camera strapped under the tube makes sure that both ends are among the answers.
  const strapped = [0.06, 0.15, 0.85, 0.94].map((share) => {
    const mm = Math.round(share * kit.tube.lengthMm);
    return { text: `a strap weight at ${String(mm)} mm`, mm };
  });
  const all = [
    ...tellingParts(kit).map(({ id, fromFrontMm }) => ({ text: names[id] ?? '', mm: fromFrontMm })),
    ...strapped,
  ].map(({ text, mm }) => ({
    text: capitalised(text),
    heavier: mm < whole.alongMm === (end === 'front'),
    reason: `It sits at ${figures(mm)} mm, ${mm < whole.alongMm ? 'in front of' : 'behind'} the balance point, so it weighs on the ${mm < whole.alongMm ? 'front' : 'back'}.`,
  }));
  const shuffled = random.shuffle(all);
  const right = shuffled.filter(({ heavier }) => heavier).slice(0, 2);
  const wrong = shuffled.filter(({ heavier }) => !heavier).slice(0, 3);
  return several({
    prompt: `${kit.name} balances at ${figures(whole.alongMm)} mm from its front end; places count from there towards the back. Which of these make its ${end} heavier?`,
    explanation:
      'What sits in front of the balance point weighs on the front, what sits behind it on the back.',
    right: right.map(({ text, reason }) => ({ text, reason })),
    wrong: wrong.map(({ text, reason }) => ({ text, reason })),
  });
}

function matchTelescopes({ random, world }: ItemDraw) {
  const part = one(random, extras);
  const lines = random.shuffle([...world.kits]).map((kit) => {
    const shift = shiftOf(kit, part);
    const end = shift > 0 ? 'back' : 'front';
    return {
      left: `${kit.name}: ${part === 'phone-adapter' ? 'phone' : 'shield'} at ${figures(partOf(kit, part).fromFrontMm)} mm`,
      right: `The ${end} gets heavier: slide ${end === 'back' ? 'forward' : 'back'} by ${figures(Math.abs(shift))} mm`,
      reason: `${kit.name} balances at ${figures(wholeOf(kit).alongMm)} mm.`,
    };
  });
  return match({
    prompt: `${part === 'phone-adapter' ? 'A phone and its holder go to the eyepiece' : 'A dew shield goes on the front'} of each telescope ${one(random, grounds)}. Without it they balance at ${lines.map(({ left, reason }) => `${/(\d+) mm/.exec(reason)?.[1] ?? ''} mm (${left.split(':')[0] ?? ''})`).join(', ')}. What has to be done with each?`,
    explanation:
      'Wren and Owl are looked into at the back, Heron at the side near its front. So the same phone makes another end heavy.',
    pairs: lines,
    spare: ['Nothing: so light a part does not count'],
  });
}

/** What a part does to a tube that was balanced. */
export const partsGoOn: ItemFamily = {
  id: 'parts-go-on',
  lesson: 'tube-on-and-balanced',
  objective: 'part',
  skill: 'balance',
  title: 'When a part goes on',
  version: 1,
  templates: {
    'phone-with-no-hand': phoneWithNoHand,
    'then-slide': thenSlide,
    'which-make-heavier': whichMakeHeavier,
    'match-telescopes': matchTelescopes,
  },
};
