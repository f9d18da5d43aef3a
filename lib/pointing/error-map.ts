import { radiansToArcminutes } from '../units/angle';
import { expectedSquareAt, pairErrorModel } from './pair-error-model';
import type { Telescope } from './scenario';
import type { StarPosition } from './star-position';

export type ErrorMapCell = StarPosition & { errorArcmin: number };

/** Middles of the cells of an error map: rings `stepDeg` apart from half a step above the horizon. */
export function errorMapPositions(stepDeg: number): StarPosition[] {
  const positions: StarPosition[] = [];
  for (let altitudeDeg = stepDeg / 2; altitudeDeg < 90; altitudeDeg += stepDeg) {
    const count = Math.max(
      1,
      Math.round((360 * Math.cos((altitudeDeg * Math.PI) / 180)) / stepDeg),
    );
    for (let j = 0; j < count; j++) {
      positions.push({ azimuthDeg: ((j + 0.5) * 360) / count, altitudeDeg });
    }
  }
  return positions;
}

/**
 * Expected pointing error over the sky after aligning on two stars, cells of about equal size.
 * Empty when the pair is undetermined.
 */
export function errorMap({
  stars,
  telescope,
  stepDeg = 5,
}: {
  stars: readonly [StarPosition, StarPosition];
  telescope: Telescope;
  stepDeg?: number;
}): ErrorMapCell[] {
  const model = pairErrorModel(telescope, stars[0], stars[1]);
  if (model === null) return [];
  return errorMapPositions(stepDeg).map((position) => ({
    ...position,
    errorArcmin: radiansToArcminutes(Math.sqrt(expectedSquareAt(model, position))),
  }));
}
