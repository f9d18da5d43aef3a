import type { Readings } from '../pointing/pointing-model';
import { wrap360 } from '../units/angle';

/** What is read off the axes: whole counts of the encoders, the azimuth in [0°, 360°). */
export function readOff(axes: Readings, encoderStepArcsec: number): Readings {
  const counted = (valueDeg: number): number =>
    (Math.round((valueDeg * 3600) / encoderStepArcsec) * encoderStepArcsec) / 3600;
  return {
    azimuthDeg: wrap360(counted(axes.azimuthDeg)),
    altitudeDeg: counted(axes.altitudeDeg),
  };
}
