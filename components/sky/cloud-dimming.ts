import type { CloudPatch } from '@/lib/pointing/scenario';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';

/**
 * How much a cloud dims what is behind it: 1.5 mag at its edge, 4 in its middle. A drawing's
 * choice, with no source: bright stars glimmer through, so that picking one stays a mistake one
 * can make.
 */
export function cloudDimming(
  clouds: readonly CloudPatch[],
  azimuthDeg: number,
  altitudeDeg: number,
): number {
  if (clouds.length === 0) return 0;
  let dimming = 0;
  const u = directionFromAzAlt(azimuthDeg, altitudeDeg);
  for (const cloud of clouds) {
    const gap = separationDeg(u, directionFromAzAlt(cloud.azimuthDeg, cloud.altitudeDeg));
    if (gap >= cloud.radiusDeg) continue;
    dimming = Math.max(dimming, 4 - 2.5 * (gap / cloud.radiusDeg));
  }
  return dimming;
}
