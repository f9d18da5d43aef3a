import { wrap360 } from '../units/angle';

/** A point of a skyline: azimuth from north through east, altitude above the level, in degrees. */
export type SkylinePoint = { readonly azimuthDeg: number; readonly altitudeDeg: number };

/**
 * The skyline's altitude in degrees at an azimuth: straight lines in azimuth between the points,
 * round the circle. No points means 0° everywhere.
 */
export function horizonAltitudeDeg(points: readonly SkylinePoint[], azimuthDeg: number): number {
  let behind: SkylinePoint | undefined;
  let ahead: SkylinePoint | undefined;
  let gapBehind = Infinity;
  let gapAhead = Infinity;
  for (const point of points) {
    const back = wrap360(azimuthDeg - point.azimuthDeg);
    const forward = wrap360(point.azimuthDeg - azimuthDeg);
    if (back < gapBehind) [gapBehind, behind] = [back, point];
    if (forward < gapAhead) [gapAhead, ahead] = [forward, point];
  }
  if (behind === undefined || ahead === undefined) return 0;
  if (gapBehind === 0) return behind.altitudeDeg;
  const share = gapBehind / (gapBehind + gapAhead);
  return behind.altitudeDeg + share * (ahead.altitudeDeg - behind.altitudeDeg);
}

export type HorizonProblem =
  'azimuth-out-of-range' | 'altitude-out-of-range' | 'duplicate-azimuth' | 'crosses-itself';

export type HorizonCheck =
  | { ok: true }
  /** `index` is the position of the offending point in the list as given. */
  | { ok: false; reason: HorizonProblem; index: number; message: string };

/**
 * Whether the points make one skyline: azimuths in [0°, 360°), altitudes in [0°, 90°], and going once
 * round from any start through north, east, south and west without turning back.
 */
export function checkHorizon(points: readonly SkylinePoint[]): HorizonCheck {
  const refuse = (reason: HorizonProblem, index: number, why: string): HorizonCheck => ({
    ok: false,
    reason,
    index,
    message: `Point ${String(index + 1)} of the horizon (azimuth ${String(points[index]?.azimuthDeg)}°) ${why}`,
  });

  let turned = 0;
  for (const [index, point] of points.entries()) {
    if (!(point.azimuthDeg >= 0 && point.azimuthDeg < 360)) {
      return refuse(
        'azimuth-out-of-range',
        index,
        'needs an azimuth from 0° up to, but not including, 360°.',
      );
    }
    if (!(point.altitudeDeg >= 0 && point.altitudeDeg <= 90)) {
      return refuse('altitude-out-of-range', index, 'needs an altitude from 0° to 90°.');
    }
    const same = points.findIndex((other) => other.azimuthDeg === point.azimuthDeg);
    if (same < index) {
      return refuse(
        'duplicate-azimuth',
        index,
        `stands where point ${String(same + 1)} does: give each azimuth once.`,
      );
    }
    const previous = points[index - 1];
    if (previous !== undefined) turned += wrap360(point.azimuthDeg - previous.azimuthDeg);
    // A skyline that has come back to its first point or beyond has turned back on the way.
    if (turned >= 360) {
      return refuse(
        'crosses-itself',
        index,
        `turns back behind point ${String(index)}, so the skyline would cross itself: list the points in order from north through east, south and west.`,
      );
    }
  }
  return { ok: true };
}
