import { degreesToRadians } from '../units/angle';

/** One ring of equal altitude, its targets evenly spaced at azimuths (j + ½)·360°/count. */
export type TargetBand = {
  altitudeDeg: number;
  sinAltitude: number;
  cosAltitude: number;
  count: number;
};

const lowestAltitudeDeg = 20;
const highestAltitudeDeg = 80;
const stepDeg = 5;

function buildBands(): TargetBand[] {
  const bands: TargetBand[] = [];
  for (let edge = lowestAltitudeDeg; edge < highestAltitudeDeg; edge += stepDeg) {
    const altitudeDeg = edge + stepDeg / 2;
    const altitude = degreesToRadians(altitudeDeg);
    bands.push({
      altitudeDeg,
      sinAltitude: Math.sin(altitude),
      cosAltitude: Math.cos(altitude),
      // Fewer targets toward the zenith, so that each stands for the same piece of sky.
      count: Math.round((360 * Math.cos(altitude)) / stepDeg),
    });
  }
  return bands;
}

/** The sky that go-tos are reckoned over: altitude 20–80° in bands of 5°, 533 targets. */
export const targetBands: readonly TargetBand[] = buildBands();

export const targetCount = targetBands.reduce((sum, band) => sum + band.count, 0);

/** Azimuth of the j-th target of a band, degrees. */
export const targetAzimuthDeg = (band: TargetBand, j: number): number =>
  ((j + 0.5) * 360) / band.count;
