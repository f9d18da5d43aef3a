import type { MountTruth } from '../pointing/achieved-errors';
import { degreesToRadians } from '../units/angle';
import type { Matrix3 } from '../units/matrix';
import type { MutableVector3 } from '../units/vector';
import type { RunSetup } from './setup';

/** Where tube and dot point, local frame; made once and written into by {@link writePose}. */
export type TubePose = {
  tube: MutableVector3;
  /** Square to the tube: where the altitude axis would lift it to. */
  tubeUp: MutableVector3;
  dot: MutableVector3;
  /** What the axes stand at, neither rounded nor wrapped. */
  azimuthDeg: number;
  altitudeDeg: number;
};

export const makePose = (): TubePose => ({
  tube: [0, 1, 0],
  tubeUp: [0, 0, 1],
  dot: [0, 1, 0],
  azimuthDeg: 0,
  altitudeDeg: 0,
});

/**
 * Points the tube for axes that stand (the tube itself, its play reckoned in) at these degrees. The
 * same mechanics as `mountDirection`, written out because it runs in every frame of the scene and may
 * allocate nothing there.
 */
export function writePose(
  azimuthDeg: number,
  altitudeDeg: number,
  { base, errors }: MountTruth,
  finder: RunSetup['dot'],
  into: TubePose,
): void {
  const azimuth = degreesToRadians(azimuthDeg);
  const sinAzimuth = Math.sin(azimuth);
  const cosAzimuth = Math.cos(azimuth);
  const altitude = degreesToRadians(altitudeDeg + errors.altitudeZeroDeg);
  const cone = degreesToRadians(errors.coneDeg);
  const skew = degreesToRadians(errors.axisSkewDeg);
  const across = Math.sin(cone);
  const along = Math.cos(cone) * Math.cos(altitude);
  const lifted = Math.cos(cone) * Math.sin(altitude);
  const { tube, tubeUp, dot } = into;

  write(
    across * Math.cos(skew) + lifted * Math.sin(skew),
    along,
    lifted * Math.cos(skew) - across * Math.sin(skew),
    sinAzimuth,
    cosAzimuth,
    base,
    tube,
  );
  // The change with altitude is square to the tube and has the length cos(cone).
  write(
    Math.cos(altitude) * Math.sin(skew),
    -Math.sin(altitude),
    Math.cos(altitude) * Math.cos(skew),
    sinAzimuth,
    cosAzimuth,
    base,
    tubeUp,
  );

  const right = Math.tan(degreesToRadians(finder.rightArcmin / 60));
  const up = Math.tan(degreesToRadians(finder.upArcmin / 60));
  const shorten = 1 / Math.sqrt(1 + right * right + up * up);
  const [x, y, z] = tube;
  const [upX, upY, upZ] = tubeUp;
  dot[0] = (x + right * (y * upZ - z * upY) + up * upX) * shorten;
  dot[1] = (y + right * (z * upX - x * upZ) + up * upY) * shorten;
  dot[2] = (z + right * (x * upY - y * upX) + up * upZ) * shorten;
}

/** Turns by the azimuth, clockwise, and from the mount's frame into the local one. */
function write(
  x: number,
  y: number,
  z: number,
  sinAzimuth: number,
  cosAzimuth: number,
  base: Matrix3,
  into: MutableVector3,
): void {
  const east = x * cosAzimuth + y * sinAzimuth;
  const north = y * cosAzimuth - x * sinAzimuth;
  into[0] = base[0] * east + base[3] * north + base[6] * z;
  into[1] = base[1] * east + base[4] * north + base[7] * z;
  into[2] = base[2] * east + base[5] * north + base[8] * z;
}
