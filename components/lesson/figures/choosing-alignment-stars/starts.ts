import type { SkyPosition } from '../sky-disc';

/** How the figures start, on the server and in the browser alike. */
export const startingPair: readonly [SkyPosition, SkyPosition] = [
  { azimuthDeg: 150, altitudeDeg: 40 },
  { azimuthDeg: 180, altitudeDeg: 40 },
];
export const startingAltitudeDeg = 12;
export const startingLatitudeDeg = 52;
