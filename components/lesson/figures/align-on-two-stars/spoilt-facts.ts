import { tilt, truthAtStart } from '@/lib/alignment/start-position';
import { achievedErrors, type MountTruth } from '@/lib/pointing/achieved-errors';
import { alignOnTwo, goToReadings } from '@/lib/pointing/align';
import type { ErrorMapCell } from '@/lib/pointing/error-map';
import { mountDirection, readingsOf } from '@/lib/pointing/mount';
import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';
import type { Telescope } from '@/lib/pointing/scenario';
import { transform, transpose } from '@/lib/units/matrix';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import type { SkyPosition } from '../sky-disc';

export const firstStar: SkyPosition = { azimuthDeg: 110, altitudeDeg: 40 };
export const secondStar: SkyPosition = { azimuthDeg: 220, altitudeDeg: 45 };
/** Four degrees from the second. */
const wrongStar: SkyPosition = { azimuthDeg: 224.6, altitudeDeg: 42.8 };
export const startingThird: SkyPosition = { azimuthDeg: 320, altitudeDeg: 35 };

/** What was done at the second star. */
export const spoils = [
  { id: 'middle', title: 'Centred in the eyepiece' },
  { id: 'edge', title: 'Left at the edge of the 9 mm field, 27′ low' },
  { id: 'dot', title: 'Put under a dot that was set on a near fence, 34′ low' },
  { id: 'wrong', title: 'A wrong star, 4° beside it' },
  { id: 'swapped', title: 'The two stars taken for each other' },
] as const;
export type SpoilId = (typeof spoils)[number]['id'];

/** A mount as a careful beginner leaves it, with the making errors of the kits. */
const truth: MountTruth = truthAtStart(
  transpose(tilt(0.4, 250)),
  { azimuthDeg: 2, altitudeDeg: 0 },
  { altitudeZeroDeg: 0.1, coneDeg: 8 / 60, axisSkewDeg: 4 / 60 },
);

const lowered = (star: SkyPosition, arcmin: number): SkyPosition => ({
  ...star,
  altitudeDeg: star.altitudeDeg - arcmin / 60,
});

function centred(spoil: SpoilId): readonly [SkyPosition, SkyPosition] {
  switch (spoil) {
    case 'middle':
      return [firstStar, secondStar];
    case 'edge':
      return [firstStar, lowered(secondStar, 27)];
    case 'dot':
      return [firstStar, lowered(secondStar, 34)];
    case 'wrong':
      return [firstStar, wrongStar];
    case 'swapped':
      return [secondStar, firstStar];
  }
}

const toward = ({ azimuthDeg, altitudeDeg }: SkyPosition) =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);

export type SpoiltFacts = {
  outcome: AlignmentOutcome;
  /** Between where a go-to ends and the third star; null without an alignment. */
  thirdMissArcmin: number | null;
  /** Of 100 targets in the observing eyepiece. */
  hits: number | null;
  /** Directions over the sky, and how far a go-to ends beside each. */
  cells: readonly ErrorMapCell[];
};

/** What the computer makes of the two, and what that is worth; all from the engine. */
export function spoiltFacts(
  { computer, fieldRadiusArcmin }: { computer: Telescope['computer']; fieldRadiusArcmin: number },
  spoil: SpoilId,
  third: SkyPosition,
): SpoiltFacts {
  const [first, second] = centred(spoil);
  const sighting = (named: SkyPosition, tube: SkyPosition) => {
    const readings = readingsOf(transform(truth.base, toward(tube)), truth.errors);
    if (readings === null) throw new Error('both stars are far from the pole of the mount');
    return { sky: toward(named), readings };
  };
  const outcome = alignOnTwo(computer, [sighting(firstStar, first), sighting(secondStar, second)]);
  if (outcome.kind !== 'agree') return { outcome, thirdMissArcmin: null, hits: null, cells: [] };
  const { hitRate, cells } = achievedErrors(outcome.model, truth, fieldRadiusArcmin, 10);
  const readings = goToReadings(outcome.model, toward(third));
  if (readings === null) throw new Error('a computer without cone and skew reaches everything');
  const tube = transform(transpose(truth.base), mountDirection(readings, truth.errors));
  return {
    outcome,
    thirdMissArcmin: 60 * separationDeg(tube, toward(third)),
    hits: 100 * hitRate,
    cells: cells.filter(({ altitudeDeg }) => altitudeDeg > 20 && altitudeDeg < 80),
  };
}
