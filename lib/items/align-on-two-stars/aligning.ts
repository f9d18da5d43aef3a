import { tilt, truthAtStart } from '../../alignment/start-position';
import type { MountTruth } from '../../pointing/achieved-errors';
import { alignOnTwo, goToReadings } from '../../pointing/align';
import { mountDirection, readingsOf } from '../../pointing/mount';
import type { AlignmentOutcome, PointingModel } from '../../pointing/pointing-model';
import type { Telescope } from '../../pointing/scenario';
import { transform, transpose } from '../../units/matrix';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../../units/vector';
import type { Random } from '../../variants/random';
import type { ChartPlace } from './sky-chart';
import { angleText, deg } from './words';

export const toward = ({ azimuthDeg, altitudeDeg }: ChartPlace): Vector3 =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);

export const apartDeg = (a: ChartPlace, b: ChartPlace): number =>
  separationDeg(toward(a), toward(b));

/** A mount that stands as a beginner leaves it: degrees of lean, of north, of the altitude zero. */
export function honestMount(
  random: Random,
  { tiltDeg = 0.5, northDeg = 3, zeroDeg = 0.6 } = {},
): MountTruth {
  const leaning = transpose(tilt(random.between(0.1, tiltDeg), random.between(0, 360)));
  return truthAtStart(
    leaning,
    {
      azimuthDeg: random.between(-northDeg, northDeg),
      altitudeDeg: random.between(-zeroDeg, zeroDeg),
    },
    { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
  );
}

export type Sighted = {
  /** What the mount asked for. */
  named: ChartPlace;
  /** Where the tube really pointed when the button was pressed. */
  centred: ChartPlace;
};

/** What the computer makes of two stars on a mount as it truly stands. */
export function outcomeOf(
  computer: Telescope['computer'],
  truth: MountTruth,
  [first, second]: readonly [Sighted, Sighted],
): AlignmentOutcome {
  const sighting = ({ named, centred }: Sighted) => {
    const readings = readingsOf(transform(truth.base, toward(centred)), truth.errors);
    if (readings === null) throw new Error('a tube without cone and skew reaches every star');
    return { sky: toward(named), readings };
  };
  return alignOnTwo(computer, [sighting(first), sighting(second)]);
}

/** How far a go-to by the model ends beside a target, degrees. */
export function missDeg(model: PointingModel, truth: MountTruth, target: ChartPlace): number {
  const readings = goToReadings(model, toward(target));
  if (readings === null) throw new Error('a computer without cone and skew reaches everything');
  const tube = transform(transpose(truth.base), mountDirection(readings, truth.errors));
  return separationDeg(tube, toward(target));
}

/** What the hand control says of it. */
export function saidOf(outcome: AlignmentOutcome): string {
  switch (outcome.kind) {
    case 'agree':
      return `These two agree to ${Math.abs(outcome.mismatchArcmin) < 1 ? '1′ or better' : angleText(Math.abs(outcome.mismatchArcmin))}`;
    case 'disagree':
      return `These two disagree by ${angleText(Math.abs(outcome.mismatchArcmin))}`;
    case 'absurd-zero':
      return 'These two do not fit together';
    case 'base-on-its-side':
      return outcome.baseTiltDeg < 30
        ? `The base would lean by ${deg(outcome.baseTiltDeg)}`
        : 'The base would lie on its side: are the two stars swapped?';
    case 'undetermined':
      return 'These two leave it open how the mount stands';
  }
}

/** A place between two and seven fists up. */
export const somePlace = (random: Random): ChartPlace => ({
  azimuthDeg: random.integer(0, 71) * 5,
  altitudeDeg: random.integer(5, 13) * 5,
});

/** Two places that make a good pair: well apart, in different directions. */
export function goodPair(random: Random): readonly [ChartPlace, ChartPlace] {
  for (;;) {
    const [a, b] = [somePlace(random), somePlace(random)];
    const gap = Math.abs(((a.azimuthDeg - b.azimuthDeg + 540) % 360) - 180);
    const apart = apartDeg(a, b);
    if (apart > 55 && apart < 120 && gap > 50 && gap < 150) return [a, b];
  }
}
