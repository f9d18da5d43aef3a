import type { PointingModel } from '../pointing/pointing-model';
import { mountDirection } from '../pointing/mount';
import { refracted, unrefracted } from '../sky/refracted-direction';
import { turnedDirection } from '../sky/turned-frame';
import { radiansToDegrees } from '../units/angle';
import { transform, transpose } from '../units/matrix';
import type { MutableVector3, Vector3 } from '../units/vector';
import type { TurningSky } from './run-sky';

/** A direction of the believed sky that the computer follows. */
export type Tracking = {
  model: PointingModel;
  /** Believed, without refraction, at the start of the motion. */
  direction: Vector3;
  latitudeDeg: number;
  refractionScale: number;
};

export const trackingOf = (
  model: PointingModel,
  sky: TurningSky,
  direction: Vector3,
): Tracking => ({
  model,
  direction,
  latitudeDeg: sky.latitudeDeg,
  refractionScale: sky.frame.refractionScale,
});

/** Follows whatever the computer takes to be in the middle of the field at these readings. */
export function trackingFromReadings(
  model: PointingModel,
  sky: TurningSky,
  readings: { azimuthDeg: number; altitudeDeg: number },
): Tracking {
  const { altitudeZeroDeg } = model;
  const seen = transform(
    transpose(model.base),
    mountDirection(readings, { altitudeZeroDeg, coneDeg: 0, axisSkewDeg: 0 }),
  );
  return trackingOf(model, sky, unrefracted(seen, sky.frame.refractionScale));
}

/**
 * The readings that keep up with the sky, so many seconds after the start. The inverse mechanics of a
 * model without cone and skew, written out because it runs in every frame; `scratch` is written over.
 */
export function writeTracked(
  { model, direction, latitudeDeg, refractionScale }: Tracking,
  seconds: number,
  scratch: MutableVector3,
  into: { azimuthDeg: number; altitudeDeg: number },
): void {
  refracted(turnedDirection(direction, latitudeDeg, seconds, scratch), refractionScale, scratch);
  const { base } = model;
  const [x, y, z] = scratch;
  const east = base[0] * x + base[1] * y + base[2] * z;
  const north = base[3] * x + base[4] * y + base[5] * z;
  const up = base[6] * x + base[7] * y + base[8] * z;
  into.azimuthDeg = radiansToDegrees(Math.atan2(east, north));
  into.altitudeDeg =
    radiansToDegrees(Math.atan2(up, Math.hypot(east, north))) - model.altitudeZeroDeg;
}
