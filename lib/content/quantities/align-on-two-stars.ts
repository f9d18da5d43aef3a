import { tilt, truthAtStart } from '../../alignment/start-position';
import { achievedErrors } from '../../pointing/achieved-errors';
import { alignOnTwo, goToReadings } from '../../pointing/align';
import { fieldRadiusArcmin } from '../../pointing/field-radius';
import { mountDirection, readingsOf } from '../../pointing/mount';
import type { Telescope } from '../../pointing/scenario';
import { pairWorth } from '../../pointing/pair-worth';
import { transform, transpose } from '../../units/matrix';
import { directionFromAzAlt, separationDeg } from '../../units/vector';
import type { Quantity, SkyPlace } from '../reckoning';
import type { Kit } from '../sky-catalogue';

type Place = Pick<SkyPlace, 'azimuthDeg' | 'altitudeDeg'>;

/** The two stars of the lesson's figure, and its mount: as a careful beginner leaves it. */
const first: Place = { azimuthDeg: 110, altitudeDeg: 40 };
const second: Place = { azimuthDeg: 220, altitudeDeg: 45 };
const truth = truthAtStart(
  transpose(tilt(0.4, 250)),
  { azimuthDeg: 2, altitudeDeg: 0 },
  { altitudeZeroDeg: 0.1, coneDeg: 8 / 60, axisSkewDeg: 4 / 60 },
);

const toward = (place: Place) => directionFromAzAlt(place.azimuthDeg, place.altitudeDeg);
const word = (words: readonly string[], index: number): string => words[index] ?? '';

/** The second star was confirmed while the tube pointed at `centred`. */
function aligned(computer: Telescope['computer'], centred: Place) {
  const sighting = (named: Place, tube: Place) => {
    const readings = readingsOf(transform(truth.base, toward(tube)), truth.errors);
    if (readings === null) throw new RangeError('out of the reach of a mount');
    return { sky: toward(named), readings };
  };
  return alignOnTwo(computer, [sighting(first, first), sighting(second, centred)]);
}

/** @throws {RangeError} where the two do not agree: a lesson would speak of nothing. */
function agreed(centred: Place) {
  const outcome = aligned('solved-zero', centred);
  if (outcome.kind !== 'agree') throw new RangeError(`these two do not agree: ${outcome.kind}`);
  return outcome;
}

function halfField({ telescope, eyepieces }: Kit, eyepieceId: string): number {
  const eyepiece = eyepieces.find(({ id }) => id === eyepieceId);
  if (eyepiece === undefined) throw new RangeError(`there is no eyepiece ${eyepieceId}`);
  return fieldRadiusArcmin(telescope, eyepiece);
}

/** What the lesson "align-on-two-stars" asks of the engine beyond what all lessons may. */
export const alignOnTwoStarsQuantities: Readonly<Record<string, Quantity>> = {
  /** Arcminutes from the middle to the edge. */
  'align-half-field': {
    takes: 'kit eyepiece',
    digits: 0,
    value: (words, { kit }) => halfField(kit(word(words, 0)), word(words, 1)),
  },
  /** A tenth of it: good centring. */
  'good-centring': {
    takes: 'kit eyepiece',
    digits: 1,
    value: (words, { kit }) => halfField(kit(word(words, 0)), word(words, 1)) / 10,
  },
  /** Targets of 100 that are really hit on the figure's mount. */
  'two-star-hits': {
    takes: 'kit centred-for-the-second',
    digits: 0,
    value: (words, { kit, place }) => {
      const { model } = agreed(place(word(words, 1)));
      const of = kit(word(words, 0));
      const radius = halfField(of, of.observingEyepieceId);
      return 100 * achievedErrors(model, truth, radius, 30).hitRate;
    },
  },
  /** Degrees that a go-to to a third place ends beside it. */
  'third-miss': {
    takes: 'centred-for-the-second third',
    digits: 1,
    value: (words, { place }) => {
      const { model } = agreed(place(word(words, 0)));
      const third = toward(place(word(words, 1)));
      const readings = goToReadings(model, third);
      if (readings === null) throw new RangeError('out of the reach of a mount');
      const tube = transform(transpose(truth.base), mountDirection(readings, truth.errors));
      return separationDeg(tube, third);
    },
  },
  /** What the computer takes the start to have been off level by, degrees. */
  'two-star-zero': {
    takes: 'centred-for-the-second',
    digits: 1,
    value: (words, { place }) => Math.abs(agreed(place(word(words, 0))).model.altitudeZeroDeg),
  },
  'two-star-lean': {
    takes: 'centred-for-the-second',
    digits: 1,
    value: (words, { place }) => agreed(place(word(words, 0))).baseTiltDeg,
  },
  /** By what the two disagree on a mount that takes its zero as given, degrees. */
  'fixed-zero-disagrees-by': {
    takes: 'centred-for-the-second',
    digits: 1,
    value: (words, { place }) => {
      const outcome = aligned('fixed-zero', place(word(words, 0)));
      return 'mismatchArcmin' in outcome ? Math.abs(outcome.mismatchArcmin) / 60 : Number.NaN;
    },
  },
  /** The hit rate of a pair when each star is centred to so many arcminutes. */
  'hit-rate-centred-to': {
    takes: 'kit star star arcminutes',
    digits: 0,
    value: (words, { kit, place, figure }) => {
      const of = kit(word(words, 0));
      const telescope = { ...of.telescope, centringArcmin: figure(word(words, 3)) };
      return (
        100 *
        pairWorth(
          telescope,
          halfField(of, of.observingEyepieceId),
          place(word(words, 1)),
          place(word(words, 2)),
        ).hitRate
      );
    },
  },
};
