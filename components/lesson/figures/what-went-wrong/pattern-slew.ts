import { tilt, truthAtStart } from '@/lib/alignment/start-position';
import { landingBeside } from '@/lib/faults/where-it-lands';
import { mountDirection } from '@/lib/pointing/mount';
import { transform, transpose } from '@/lib/units/matrix';
import { azAltFromDirection, directionFromAzAlt } from '@/lib/units/vector';
import type { SkyPosition } from '../sky-disc';

/** A first slew on a mount that leans, or whose tube was not level, and knows nothing of it. */
export function patternSlew(
  {
    tiltDeg = 0,
    risesTowardsDeg = 0,
    startAltitudeDeg = 0,
  }: { tiltDeg?: number; risesTowardsDeg?: number; startAltitudeDeg?: number },
  star: SkyPosition,
): { rightDeg: number; upDeg: number; lands: SkyPosition } {
  const truth = truthAtStart(
    transpose(tilt(tiltDeg, risesTowardsDeg)),
    { azimuthDeg: 0, altitudeDeg: startAltitudeDeg },
    { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
  );
  const tube = transform(transpose(truth.base), mountDirection(star, truth.errors));
  const seen = directionFromAzAlt(star.azimuthDeg, star.altitudeDeg);
  const { rightDeg, upDeg } = landingBeside({ hip: 0, name: '' }, seen, tube);
  return { rightDeg, upDeg, lands: azAltFromDirection(tube) };
}
