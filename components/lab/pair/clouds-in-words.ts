import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import type { CloudPatch } from '@/lib/pointing/scenario';
import { signpostDirections } from '@/components/sky/directions';
import { fistDeg, fistsInWords } from '@/components/sky/position-words';

const stepDeg = 5;
const sidewaysDeg = [-18, -9, 0, 9, 18];

function covered(clouds: readonly CloudPatch[], azimuthDeg: number, altitudeDeg: number): boolean {
  const u = directionFromAzAlt(azimuthDeg, altitudeDeg);
  return clouds.some(
    (cloud) =>
      separationDeg(u, directionFromAzAlt(cloud.azimuthDeg, cloud.altitudeDeg)) < cloud.radiusDeg,
  );
}

/** The heights, in steps of half a fist, at which most of a direction's width is under cloud. */
function cloudedHeights(clouds: readonly CloudPatch[], azimuthDeg: number): number[] {
  const heights: number[] = [];
  for (let altitude = stepDeg / 2; altitude < 90; altitude += stepDeg) {
    const under = sidewaysDeg.filter((offset) =>
      covered(clouds, azimuthDeg + offset, altitude),
    ).length;
    if (under * 2 > sidewaysDeg.length) heights.push(altitude);
  }
  return heights;
}

/** Cloud as an eye would tell it: in which directions, from how high to how high. */
export function cloudsInWords(clouds: readonly CloudPatch[]): string {
  if (clouds.length === 0) return 'No cloud.';
  const parts: string[] = [];
  for (const { azimuthDeg, word } of signpostDirections) {
    const heights = cloudedHeights(clouds, azimuthDeg);
    const [lowest] = heights;
    const highest = heights.at(-1);
    if (lowest === undefined || highest === undefined) continue;
    const from = (lowest - stepDeg / 2) / fistDeg;
    const to = (highest + stepDeg / 2) / fistDeg;
    const broken = heights.length * stepDeg < (to - from) * fistDeg;
    parts.push(
      `${word} ${from === 0 ? 'from the ground' : `from ${fistsInWords(from)}`} to ${to >= 9 ? 'straight up' : fistsInWords(to)}${broken ? ', with gaps' : ''}`,
    );
  }
  return parts.length === 0 ? 'A few small clouds.' : `Cloud: ${parts.join('; ')}.`;
}
