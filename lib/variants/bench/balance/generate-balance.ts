import { bestClampMm, edgeMm } from '../../../balance/answers';
import { togetherAsOne } from '../../../balance/centre-of-mass';
import type { AltitudeRange } from '../../../balance/holding';
import { freeFallMPerS2 } from '../../../balance/torque';
import { randomFrom, type Random } from '../../random';
import { drawBar } from './balance-bar';
import { carriedAt, drawParts, drawTube, strapWeights } from './balance-masses';
import { isFairBalance } from './balance-fairness';
import type { BalanceTemplate, BalanceVariant } from './balance-variant';
import type { BenchKit } from '../bench-kit';
import type { BenchTaskInput } from '../bench-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

/** The clamp takes this much of the bar's length, millimetres; invented like the kits. */
const clampLengthMm = 50;

/** Most draws are fair at once; so many in a row that are not means that a kit is impossible. */
const mostDraws = 4000;

export function generateBalance({
  seed,
  templates,
  kit,
}: BenchTaskInput<BalanceTemplate>): BalanceVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  for (let draw = 0; draw < mostDraws; draw += 1) {
    const variant = drawVariant(template, kit, random);
    if (isFairBalance(variant)) return variant;
  }
  throw new Error(`no fair task of "${template}" can be made with ${kit.name}`);
}

/** What is on every tube that somebody looks through. */
const alwaysOn = ['prism', 'diagonal', 'finder', 'eyepiece-25'];

function drawVariant(template: BalanceTemplate, kit: BenchKit, random: Random): BalanceVariant {
  const travelMm = Math.max(60, kit.tube.dovetailLengthMm - clampLengthMm);
  // So far before the tube that even a dew shield's place is a positive number.
  const frontMm = random.integer(110, 270);
  const tube = drawTube(kit, frontMm, random);
  const kitParts = drawParts(kit, frontMm, random);
  const parts =
    template === 'short-bar'
      ? [...kitParts, ...strapWeights(kit, frontMm, random.between(0.3, 0.8))]
      : kitParts;
  const withPhone = template === 'phone-joins' || template === 'short-bar';
  const dewy = template !== 'short-bar' && template !== 'phone-joins' && random.next() < 0.4;
  const needed = parts
    .map(({ id }) => id)
    .filter(
      (id) =>
        alwaysOn.includes(id) ||
        (withPhone && id === 'phone-adapter') ||
        (dewy && id === 'dew-shield'),
    );
  const end = random.pick(['weight-front', 'weight-back']) ?? 'weight-front';
  const on = template === 'short-bar' ? [...needed, end] : needed;
  const range = drawRange(template, random);
  const armMm = Math.min(random.between(9, 11.5), travelMm / 9);

  const onTube = parts.filter(({ id }) => on.includes(id));
  const carried = carriedAt(tube, onTube, heightMm(template, armMm, random));
  const all = togetherAsOne([carried, ...onTube]);
  const holdingTorqueNm = Math.round((all.massKg * freeFallMPerS2 * armMm) / 10) / 100;

  const pieces = { tube: carried, parts, range };
  const bar = drawBar(template, { ...pieces, on, needed, travelMm, armMm }, random);
  const startOn =
    template === 'phone-joins' ? needed.filter((id) => id !== 'phone-adapter') : needed;
  const made = {
    ...({ lab: 'balance', template, generatorVersion, kitName: kit.name } as const),
    ...pieces,
    bar,
    holdingTorqueNm,
    needed,
    tubeType: kit.tubeType,
    frontMm,
    tubeLengthMm: kit.tube.lengthMm,
    tubeDiameterMm: kit.tube.diameterMm,
    asksForesight: template !== 'two-edges',
    weightsTold: template !== 'two-edges',
    asksReading: template === 'two-edges' || template === 'phone-joins',
  };
  const clampMm = startClampMm(template, made, startOn, random);
  return {
    ...made,
    // Where a part joins, the tube hangs in its clutch as before; else somebody has just put it in.
    start: { clampMm, on: startOn, handOn: template !== 'phone-joins' && template !== 'raised' },
  };
}

const drawRange = (template: BalanceTemplate, random: Random): AltitudeRange => {
  if (template !== 'raised') return { lowDeg: 0, highDeg: 90 };
  const lowDeg = random.integer(26, 34);
  return { lowDeg, highDeg: lowDeg + random.integer(36, 40) };
};

/** How far above the axis the whole lies in the end; against the arm at which the clutch gives way. */
function heightMm(template: BalanceTemplate, armMm: number, random: Random): number {
  if (template === 'raised')
    return (random.pick([1, -1]) ?? 1) * random.between(1.25, 1.38) * armMm;
  // A phone sits high: with it on the whole comes out as much too high as it lay too low before.
  if (template === 'phone-joins') return random.between(0.3, 0.45) * armMm;
  return random.between(-0.25, 0.25) * armMm;
}

function startClampMm(
  template: BalanceTemplate,
  made: Omit<BalanceVariant, 'start'>,
  on: readonly string[],
  random: Random,
): number {
  const bench = { ...made, start: { clampMm: 0, on, handOn: false } };
  const onTube = made.parts.filter(({ id }) => on.includes(id));
  const all = togetherAsOne([made.tube, ...onTube]);
  switch (template) {
    case 'phone-joins':
      return Math.round(bestClampMm(bench, on));
    case 'raised':
      // Balanced level, as one does who tries it at one altitude only.
      return Math.round(all.alongMm);
    case 'short-bar':
      return Math.round((made.bar.leastMm + made.bar.mostMm) / 2);
    case 'first-balance':
    case 'two-edges': {
      const offMm = random.between(2.2, 4) * edgeMm(all, made.holdingTorqueNm);
      return Math.round(bestClampMm(bench, on) + (random.pick([1, -1]) ?? 1) * offMm);
    }
  }
}
