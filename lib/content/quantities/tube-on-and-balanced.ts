import { balanceShiftMm, togetherAsOne, type PlacedMass } from '../../balance/centre-of-mass';
import { degreesToRadians } from '../../units/angle';
import type { Quantity, ReckoningSources } from '../reckoning';

const word = (words: readonly string[], index: number): string => words[index] ?? '';

/** What is on every tube that somebody looks through. */
const alwaysOn: readonly string[] = ['prism', 'diagonal', 'finder', 'eyepiece-25'];

/** A kit's tube with all that is always on it, as one; places from its front end, millimetres. */
function ready(kit: string, sources: ReckoningSources): PlacedMass {
  const { tube, parts } = sources.kit(kit).bench;
  return togetherAsOne([
    { massKg: tube.massKg, alongMm: tube.centreOfMassFromFrontMm, aboveAxisMm: 0 },
    ...parts
      .filter(({ id }) => alwaysOn.includes(id))
      .map(({ massKg, fromFrontMm }) => ({ massKg, alongMm: fromFrontMm, aboveAxisMm: 0 })),
  ]);
}

const partOf = (words: readonly string[], sources: ReckoningSources) =>
  sources.kit(word(words, 0)).bench.parts.find(({ id }) => id === word(words, 1));

/** What the lesson "tube-on-and-balanced" asks of the engine beyond what all lessons may. */
export const tubeOnAndBalancedQuantities: Readonly<Record<string, Quantity>> = {
  /** Kilograms of a kit's tube ready for use. */
  'tube-weighs': {
    takes: 'kit',
    digits: 1,
    value: (words, sources) => ready(word(words, 0), sources).massKg,
  },
  /** Where it balances, millimetres from its front end. */
  'tube-balances-at': {
    takes: 'kit',
    digits: 0,
    value: (words, sources) => ready(word(words, 0), sources).alongMm,
  },
  /** How far a part moves the balance point towards the back, millimetres; negative: towards the front. */
  'part-shifts-back': {
    takes: 'kit part',
    digits: 0,
    value: (words, sources) => {
      const part = partOf(words, sources);
      return part === undefined
        ? Number.NaN
        : balanceShiftMm(ready(word(words, 0), sources), {
            massKg: part.massKg,
            alongMm: part.fromFrontMm,
          });
    },
    words: (mm) => `${String(Math.abs(Math.round(mm)))} mm`,
  },
  /** A weight of kilograms at millimetres from the balance point of a tube of kilograms: the shift. */
  'weight-shifts': {
    takes: 'kg kg mm',
    digits: 0,
    value: (words, { figure }) =>
      balanceShiftMm(
        { massKg: figure(word(words, 0)), alongMm: 0, aboveAxisMm: 0 },
        { massKg: figure(word(words, 1)), alongMm: figure(word(words, 2)) },
      ),
  },
  /** The arm, millimetres, of a weight so far above the axis on a tube raised to an altitude. */
  'arm-when-raised': {
    takes: 'mm altitude',
    digits: 0,
    value: (words, { figure }) =>
      figure(word(words, 0)) * Math.sin(degreesToRadians(figure(word(words, 1)))),
  },
};
