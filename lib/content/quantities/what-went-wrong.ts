import { tilt, truthAtStart } from '../../alignment/start-position';
import { landingBeside } from '../../faults/where-it-lands';
import { alignOnTwo } from '../../pointing/align';
import { mountDirection, readingsOf } from '../../pointing/mount';
import { siderealDegPerSecond, turnedDirection } from '../../sky/turned-frame';
import { degreesToRadians, radiansToDegrees } from '../../units/angle';
import { identity, transform, transpose } from '../../units/matrix';
import { directionFromAzAlt } from '../../units/vector';
import type { Quantity, SkyPlace } from '../reckoning';

type Place = Pick<SkyPlace, 'azimuthDeg' | 'altitudeDeg'>;

const word = (words: readonly string[], index: number): string => words[index] ?? '';
const toward = (place: Place) => directionFromAzAlt(place.azimuthDeg, place.altitudeDeg);
const noErrors = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };

/** How high a first slew ends on a mount that is believed level and set to north, degrees. */
function slewHighDeg(
  star: Place,
  {
    tiltDeg = 0,
    towardDeg = 0,
    startDeg = 0,
  }: { tiltDeg?: number; towardDeg?: number; startDeg?: number },
): number {
  const truth = truthAtStart(
    transpose(tilt(tiltDeg, towardDeg)),
    { azimuthDeg: 0, altitudeDeg: startDeg },
    noErrors,
  );
  const tube = transform(transpose(truth.base), mountDirection(star, truth.errors));
  return landingBeside({ hip: 0, name: '' }, toward(star), tube).upDeg;
}

/** What the lesson "what-went-wrong" asks of the engine beyond what all lessons may. */
export const whatWentWrongQuantities: Readonly<Record<string, Quantity>> = {
  /** Degrees that the sky turns about its pole in so many hours. */
  'sky-turns-in-hours': {
    takes: 'hours',
    digits: 0,
    value: (words, { figure }) => 3600 * siderealDegPerSecond * figure(word(words, 0)),
  },
  /** Degrees by which the sky is turned at the same clock time so many days later. */
  'sky-turns-in-days': {
    takes: 'days',
    digits: 0,
    value: (words, { figure }) => (86_400 * siderealDegPerSecond - 360) * figure(word(words, 0)),
  },
  /** How far from itself a star is after so many hours, by its declination. */
  'star-moves-in-hours': {
    takes: 'hours declination',
    digits: 1,
    value: (words, { figure }) =>
      2 *
      radiansToDegrees(
        Math.asin(
          Math.cos(degreesToRadians(figure(word(words, 1)))) *
            Math.sin(degreesToRadians(3600 * siderealDegPerSecond * figure(word(words, 0))) / 2),
        ),
      ),
  },
  /** Degrees above a star at which a first slew ends with a base that leans: below is negative. */
  'lean-lifts': {
    takes: 'tilt rises-towards star',
    digits: 1,
    value: (words, { figure, place }) =>
      slewHighDeg(place(word(words, 2)), {
        tiltDeg: figure(word(words, 0)),
        towardDeg: figure(word(words, 1)),
      }),
  },
  /** The same for a tube that was not level at the start. */
  'start-lifts': {
    takes: 'start-altitude star',
    digits: 1,
    value: (words, { figure, place }) =>
      slewHighDeg(place(word(words, 1)), { startDeg: figure(word(words, 0)) }),
  },
  /** How far a base would have to lean for two stars to fit a clock that is so many hours fast. */
  'lean-for-clock': {
    takes: 'hours latitude star star',
    digits: 0,
    value: (words, { figure, place }) => {
      const sighting = (star: Place) => {
        const seen = toward(star);
        const readings = readingsOf(transform(identity, seen), noErrors);
        if (readings === null) throw new RangeError('out of the reach of a mount');
        const sky = turnedDirection(seen, figure(word(words, 1)), 3600 * figure(word(words, 0)));
        return { sky, readings };
      };
      const outcome = alignOnTwo('solved-zero', [
        sighting(place(word(words, 2))),
        sighting(place(word(words, 3))),
      ]);
      return 'baseTiltDeg' in outcome ? outcome.baseTiltDeg : Number.NaN;
    },
  },
};
