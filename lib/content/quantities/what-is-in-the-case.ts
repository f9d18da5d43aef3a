import { darkPupilMm, lightPast, lightRatio } from '../../optics/light-gathered';
import { lightTrain } from '../../optics/light-path';
import type { Kit } from '../sky-catalogue';
import type { Quantity } from '../reckoning';

const word = (words: readonly string[], index: number): string => words[index] ?? '';

const trainOf = ({ tubeType, telescope, bench }: Kit) =>
  lightTrain({
    tubeType,
    lengthMm: bench.tube.lengthMm,
    focalLengthMm: telescope.focalLengthMm,
    apertureMm: telescope.apertureMm,
  });

/** What the lesson "what-is-in-the-case" asks of the engine beyond what all lessons may. */
export const whatIsInTheCaseQuantities: Readonly<Record<string, Quantity>> = {
  /** How many times as much light a telescope gathers as an eye in the dark. */
  'light-than-eye': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => lightRatio(kit(word(words, 0)).telescope.apertureMm, darkPupilMm),
  },
  /** How many times as much light one telescope gathers as another. */
  'light-than-kit': {
    takes: 'kit kit',
    digits: 1,
    value: (words, { kit }) =>
      lightRatio(
        kit(word(words, 0)).telescope.apertureMm,
        kit(word(words, 1)).telescope.apertureMm,
      ),
  },
  'front-width': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => kit(word(words, 0)).telescope.apertureMm,
  },
  'focal-length': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => kit(word(words, 0)).telescope.focalLengthMm,
  },
  'tube-length': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => kit(word(words, 0)).bench.tube.lengthMm,
  },
  /** Per cent of a telescope's front that its small mirror shades. */
  'front-shaded': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => {
      const one = kit(word(words, 0));
      return 100 * ((2 * trainOf(one).shadowRadiusMm) / one.telescope.apertureMm) ** 2;
    },
  },
  /** Per cent of the light past a card over so many per cent of the width. */
  'light-past-card': {
    takes: 'kit covered-percent',
    digits: 0,
    value: (words, { kit, figure }) => {
      const one = kit(word(words, 0));
      const { apertureMm } = one.telescope;
      const cardDownToMm = apertureMm * (0.5 - figure(word(words, 1)) / 100);
      const { shadowRadiusMm } = trainOf(one);
      return 100 * lightPast({ apertureMm, shadowRadiusMm, cardDownToMm });
    },
  },
};
