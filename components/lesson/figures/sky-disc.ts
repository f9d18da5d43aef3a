import { wrap360 } from '@/lib/units/angle';

export type SkyPosition = { azimuthDeg: number; altitudeDeg: number };
export type DiscPoint = { x: number; y: number };

/** Radius of the horizon in the picture's own units. */
export const discRadius = 100;

/**
 * The whole sky as a disc: zenith in the middle, horizon as rim, altitude evenly spaced (azimuthal
 * equidistant). North is up and east on the left, as one sees it lying on the back; y grows down.
 */
export function discPoint({ azimuthDeg, altitudeDeg }: SkyPosition): DiscPoint {
  const fromZenith = ((90 - altitudeDeg) / 90) * discRadius;
  const azimuth = (azimuthDeg * Math.PI) / 180;
  return { x: -fromZenith * Math.sin(azimuth), y: -fromZenith * Math.cos(azimuth) };
}

/** Inverse of {@link discPoint}; a point outside the rim is brought back to the horizon. */
export function discPosition({ x, y }: DiscPoint): SkyPosition {
  const fromZenith = Math.min(Math.hypot(x, y), discRadius);
  return {
    azimuthDeg: wrap360((Math.atan2(-x, -y) * 180) / Math.PI),
    altitudeDeg: 90 - (fromZenith / discRadius) * 90,
  };
}
