import { transform, transpose, type Matrix3 } from '../units/matrix';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { goToReadings } from './align';
import { errorMapPositions, type ErrorMapCell } from './error-map';
import { mountDirection } from './mount';
import type { MountErrors, PointingModel } from './pointing-model';
import type { StarPosition } from './star-position';
import { targetAzimuthDeg, targetBands, targetCount } from './target-grid';

/** How the mount really stands (local sky → mount) and what its making gets wrong. */
export type MountTruth = { base: Matrix3; errors: MountErrors };

export type AchievedErrors = {
  /** Share of the 533 targets that a go-to lands within the field radius of, 0–1. */
  hitRate: number;
  /** Root mean square over those targets. */
  rmsArcmin: number;
  /** The same over the whole sky, on the cells of the expected error map. */
  cells: ErrorMapCell[];
};

/**
 * What an alignment is really worth: for each target the miss, in arcminutes, of a go-to by the
 * model on the mount as it truly is; exact mechanics throughout, no centring by hand afterwards.
 */
export function achievedErrors(
  model: PointingModel,
  truth: MountTruth,
  fieldRadiusArcmin: number,
  stepDeg = 5,
): AchievedErrors {
  const toSky = transpose(truth.base);
  const missArcmin = ({ azimuthDeg, altitudeDeg }: StarPosition): number => {
    const wanted = directionFromAzAlt(azimuthDeg, altitudeDeg);
    const readings = goToReadings(model, wanted);
    if (readings === null) throw new Error('a model without cone and skew reaches every direction');
    return separationDeg(transform(toSky, mountDirection(readings, truth.errors)), wanted) * 60;
  };

  let hits = 0;
  let squares = 0;
  for (const band of targetBands) {
    for (let j = 0; j < band.count; j++) {
      const miss = missArcmin({
        azimuthDeg: targetAzimuthDeg(band, j),
        altitudeDeg: band.altitudeDeg,
      });
      if (miss <= fieldRadiusArcmin) hits++;
      squares += miss * miss;
    }
  }
  return {
    hitRate: hits / targetCount,
    rmsArcmin: Math.sqrt(squares / targetCount),
    cells: errorMapPositions(stepDeg).map((position) => ({
      ...position,
      errorArcmin: missArcmin(position),
    })),
  };
}
