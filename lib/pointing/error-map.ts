import { radiansToArcminutes } from '../units/angle';
import { expectedSquareAt, pairErrorModel } from './pair-error-model';
import type { Telescope } from './scenario';
import type { StarPosition } from './star-position';

export type ErrorMapCell = StarPosition & { errorArcmin: number };

/**
 * Expected pointing error over the sky after aligning on two stars, on rings `stepDeg` apart from
 * half a step above the horizon, cells of about equal size. Empty when the pair is undetermined.
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
  const cells: ErrorMapCell[] = [];
  for (let altitudeDeg = stepDeg / 2; altitudeDeg < 90; altitudeDeg += stepDeg) {
    const count = Math.max(
      1,
      Math.round((360 * Math.cos((altitudeDeg * Math.PI) / 180)) / stepDeg),
    );
    for (let j = 0; j < count; j++) {
      const position = { azimuthDeg: ((j + 0.5) * 360) / count, altitudeDeg };
      const errorArcmin = radiansToArcminutes(Math.sqrt(expectedSquareAt(model, position)));
      cells.push({ ...position, errorArcmin });
    }
  }
  return cells;
}
