import { magnification } from '../../optics/magnification';
import { choice, match, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { eyepieceOf, inNumber, inThree, soldFocalLengths, withFocalLength } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

const times = (kit: ItemKit, focalLengthMm: number): number =>
  magnification(kit, { focalLengthMm });
const sum = (kit: ItemKit, focalLengthMm: number): string =>
  `${String(kit.focalLengthMm)} mm ÷ ${String(focalLengthMm)} mm is ${inNumber(times(kit, focalLengthMm), 1)}`;

function reckon({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(random, soldFocalLengths);
  const key = times(kit, focalLengthMm);
  return numeric({
    prompt: pickOne(random, [
      `${withFocalLength(kit)} carries ${eyepieceOf(focalLengthMm)}. How many times does it magnify?`,
      `You push ${eyepieceOf(focalLengthMm)} into ${withFocalLength(kit)}. How many times larger does the Moon look?`,
    ]),
    unit: 'times',
    key,
    tolerance: { mode: 'relative', full: 0.03, zero: 0.12 },
    explanation: `Magnification is the focal length of the telescope over that of the eyepiece: ${sum(kit, focalLengthMm)}.`,
    slips: [
      {
        gives: Number((kit.apertureMm / focalLengthMm).toFixed(2)),
        reason: `That divides the width of the tube, ${String(kit.apertureMm)} mm. Width gives light. Focal length gives magnification.`,
      },
      {
        gives: Number((focalLengthMm / kit.focalLengthMm).toFixed(4)),
        reason: 'That is the sum upside down: the eyepiece over the telescope.',
      },
    ],
  });
}

function whichDoesIt({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const [right = 25, ...others] = random.shuffle(soldFocalLengths).slice(0, 4);
  const wanted = inNumber(times(kit, right));
  return choice({
    prompt: `Which eyepiece makes ${withFocalLength(kit)} magnify about ${wanted} times?`,
    explanation: `Divide the telescope’s focal length by the magnification: ${String(kit.focalLengthMm)} mm ÷ ${wanted} is about ${String(right)} mm.`,
    right: { text: capitalised(eyepieceOf(right)), reason: `${sum(kit, right)}.` },
    wrong: others.map((focalLengthMm) => ({
      text: capitalised(eyepieceOf(focalLengthMm)),
      reason:
        focalLengthMm > right
          ? `${sum(kit, focalLengthMm)}: too little. The longer the eyepiece’s focal length, the less it magnifies.`
          : `${sum(kit, focalLengthMm)}: too much. The shorter the eyepiece’s focal length, the more it magnifies.`,
      misconception: 'longer-eyepiece-stronger' as const,
    })),
  });
}

function weakestFirst({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const weakFirst = random.integer(0, 1) === 0;
  const chosen = random
    .shuffle(soldFocalLengths)
    .slice(0, 4)
    .sort((a, b) => (weakFirst ? b - a : a - b));
  const which = weakFirst ? 'least magnifying first' : 'most magnifying first';
  return order({
    prompt: `These four eyepieces are for ${withFocalLength(kit)}. Put them in order, the ${which}.`,
    explanation: `The magnifications are ${chosen.map((f) => `${inThree(times(kit, f))} (${String(f)} mm)`).join(', ')}. The shorter the eyepiece’s focal length, the more it magnifies.`,
    steps: chosen.map((focalLengthMm) => capitalised(eyepieceOf(focalLengthMm))),
    rules: chosen.flatMap((one, first) =>
      chosen.slice(first + 1).map((other, further) => ({
        first,
        then: first + 1 + further,
        reason: `${eyepieceOf(one)} gives ${inThree(times(kit, one))} times, ${eyepieceOf(other)} ${inThree(times(kit, other))}.`,
      })),
    ),
  });
}

function fromTubeToTube({ random, world }: ItemDraw) {
  const focalLengthMm = pickOne(random, soldFocalLengths);
  const kits = random.shuffle(world.kits);
  const spareMm = pickOne(
    random,
    soldFocalLengths.filter((one) => Math.abs(one / focalLengthMm - 1) > 0.3),
  );
  const spare = kits[0] === undefined ? 1 : times(kits[0], spareMm);
  const given = kits.map((kit) => `${inThree(times(kit, focalLengthMm))} times`);
  return match({
    prompt: `One eyepiece of ${String(focalLengthMm)} mm goes from telescope to telescope. How much does it magnify in each?`,
    explanation: `Telescope over eyepiece: ${kits.map((kit) => `${kit.name} ${sum(kit, focalLengthMm)}`).join('; ')}.`,
    pairs: kits.map((kit) => ({
      left: withFocalLength(kit),
      right: `${inThree(times(kit, focalLengthMm))} times`,
      reason: `${sum(kit, focalLengthMm)}.`,
    })),
    spare: [`${inThree(spare)} times`].filter((text) => !given.includes(text)),
  });
}

/** Focal length over focal length. */
export const timesLarger: ItemFamily = {
  id: 'times-larger',
  lesson: 'eyepieces-and-views',
  objective: 'magnify',
  skill: 'field',
  title: 'How many times an eyepiece magnifies',
  version: 1,
  templates: {
    reckon,
    'which-does-it': whichDoesIt,
    'weakest-first': weakestFirst,
    'from-tube-to-tube': fromTubeToTube,
  },
};
