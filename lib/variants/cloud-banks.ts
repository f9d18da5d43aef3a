import { degreesToRadians, wrap360 } from '../units/angle';
import type { CloudPatch } from '../pointing/scenario';
import type { Night } from './night';
import type { Random } from './random';

/** The scenario's own limit on patches. */
const mostPatches = 40;
const clampAltitude = (altitudeDeg: number) => Math.min(90, Math.max(0, altitudeDeg));
const rounded = (value: number) => Math.round(value * 10) / 10;

const patch = (azimuthDeg: number, altitudeDeg: number, radiusDeg: number): CloudPatch => ({
  // 359.97 rounds to 360.0, which is 0.
  azimuthDeg: rounded(wrap360(azimuthDeg)) % 360,
  altitudeDeg: rounded(clampAltitude(altitudeDeg)),
  radiusDeg: rounded(radiusDeg),
});

/** A bank drifting in from one side: a stretch of the horizon covered up to some height. */
export function cloudBank(random: Random, already: readonly CloudPatch[]): CloudPatch[] {
  const middleDeg = random.between(0, 360);
  const halfWidthDeg = random.between(45, 85);
  const topDeg = random.between(40, 68);
  const stepDeg = 20;
  const patches: CloudPatch[] = [];
  for (let altitudeDeg = 8; altitudeDeg < topDeg; altitudeDeg += stepDeg) {
    // Narrower toward the top, as a bank is.
    const half = halfWidthDeg * (1 - 0.4 * (altitudeDeg / topDeg));
    const across = Math.max(
      1,
      Math.round((2 * half * Math.cos(degreesToRadians(altitudeDeg))) / stepDeg),
    );
    for (let i = 0; i < across; i++) {
      const azimuthDeg = middleDeg - half + ((i + 0.5) * 2 * half) / across;
      patches.push(
        patch(
          azimuthDeg + random.between(-4, 4),
          altitudeDeg + random.between(-4, 4),
          random.between(13, 18),
        ),
      );
    }
  }
  return [...already, ...patches].slice(0, mostPatches);
}

/**
 * An overcast with gaps, such that at most `passing` stars stay usable even with the dead band while
 * others can be seen. Null when it cannot be had with the patches that are left.
 */
export function overcast(
  random: Random,
  already: readonly CloudPatch[],
  passing: 0 | 1,
  withClouds: (clouds: readonly CloudPatch[]) => Night,
): Night | null {
  const passes = (night: Night) =>
    night.stars.filter((star) => star.usableAtLimit).length <= passing;
  let sheet = [...already, ...coveringSheet(random)].slice(0, mostPatches);
  let night = withClouds(sheet);
  // The sheet has thin spots: cover what shows through them.
  for (const star of random.shuffle(night.stars.filter((one) => one.usableAtLimit))) {
    if (passes(night) || sheet.length >= mostPatches) break;
    const size = random.between(8, 12);
    sheet.push(
      patch(
        star.azimuthDeg + random.between(-2, 2),
        star.altitudeDeg + random.between(-2, 2),
        size,
      ),
    );
    night = withClouds(sheet);
  }
  if (!passes(night)) return null;

  // Open gaps for as long as they show stars and no usable pair.
  const gapsWanted = random.integer(6, 12);
  let gaps = 0;
  for (const cloud of random.shuffle(sheet.slice(already.length))) {
    if (gaps === gapsWanted) break;
    const opened = sheet.filter((one) => one !== cloud);
    const through = withClouds(opened);
    if (!passes(through) || countInView(through) <= countInView(night)) continue;
    [sheet, night] = [opened, through];
    gaps++;
  }
  return night;
}

export const countInView = (night: Night): number =>
  night.stars.filter((star) => star.inView).length;

/** Rings of patches over the whole sky, with a clear strip along the horizon or without. */
function coveringSheet(random: Random): CloudPatch[] {
  const stepDeg = 24;
  const clearStrip = random.next() < 0.6;
  const altitudes = clearStrip ? [30, 54, 79] : [9, 33, 57, 81];
  const turnDeg = random.between(0, 360);
  return altitudes.flatMap((altitudeDeg) => {
    const count = Math.max(
      3,
      Math.round((360 * Math.cos(degreesToRadians(altitudeDeg))) / stepDeg),
    );
    return Array.from({ length: count }, (_, i) =>
      patch(
        turnDeg + ((i + 0.5) * 360) / count + random.between(-3, 3),
        altitudeDeg + random.between(-2, 2),
        random.between(17, 20),
      ),
    );
  });
}
