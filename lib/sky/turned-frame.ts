import {
  azAltFromDirection,
  directionFromAzAlt,
  type MutableVector3,
  type Vector3,
} from '../units/vector';
import { degreesToRadians, radiansToDegrees } from '../units/angle';
import { refractionDeg } from './refraction';
import type { BodyPlace, SkyFrame } from './sky-frame';

/**
 * How fast the sky turns: 15.041″ a second of time. Mean sidereal day of the IAU 1982 expression,
 * in Meeus, *Astronomical Algorithms* 2nd ed., ch. 12.
 */
export const siderealDegPerSecond = 360.985_647_366_29 / 86_400;

/**
 * Where a direction that shares in the sky's daily turn has gone after so many seconds: east, north,
 * up, without refraction, seen from a latitude. Writes into `into` and allocates nothing then.
 */
export function turnedDirection(
  [x, y, z]: Vector3,
  latitudeDeg: number,
  seconds: number,
  into: MutableVector3 = [0, 0, 0],
): MutableVector3 {
  const latitude = degreesToRadians(latitudeDeg);
  const poleNorth = Math.cos(latitude);
  const poleUp = Math.sin(latitude);
  // Seen from outside, the Earth turns towards the east; the sky goes the other way about the pole.
  const turn = degreesToRadians(-siderealDegPerSecond * seconds);
  const sin = Math.sin(turn);
  const cos = Math.cos(turn);
  const along = (poleNorth * y + poleUp * z) * (1 - cos);
  into[0] = x * cos + (poleNorth * z - poleUp * y) * sin;
  into[1] = y * cos + poleUp * x * sin + poleNorth * along;
  into[2] = z * cos - poleNorth * x * sin + poleUp * along;
  return into;
}

/**
 * The sky of the same place so many seconds later, from the frame alone: turned about the pole, and
 * refraction applied anew. For runs of up to two hours: stars within 1″ of a frame computed for the
 * later instant. What moves by itself is left where it was among the stars: the Moon falls behind by
 * about half a degree an hour (and its parallax stays), the Sun by 2.5′, planets by less. The Moon's
 * phase and all magnitudes stay.
 */
export function turnedFrame(frame: SkyFrame, latitudeDeg: number, seconds: number): SkyFrame {
  if (seconds === 0) return frame;
  const m = frame.icrsToLocal;
  const column = (i: number): Vector3 =>
    turnedDirection([m[i] ?? NaN, m[i + 3] ?? NaN, m[i + 6] ?? NaN], latitudeDeg, seconds);
  const [a, b, c] = [column(0), column(1), column(2)];
  const turned = <Body extends BodyPlace>(body: Body): Body => ({
    ...body,
    ...turnedPlace(body, latitudeDeg, seconds, frame.refractionScale),
  });
  return {
    ...frame,
    instant: new Date(Date.parse(frame.instant) + seconds * 1000).toISOString(),
    yearsFromJ2000: frame.yearsFromJ2000 + seconds / (365.25 * 86_400),
    icrsToLocal: [a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]],
    sun: turned(frame.sun),
    moon: turned(frame.moon),
    planets: frame.planets.map(turned),
  };
}

function turnedPlace(
  body: BodyPlace,
  latitudeDeg: number,
  seconds: number,
  refractionScale: number,
): Pick<BodyPlace, 'azimuthDeg' | 'altitudeDeg' | 'trueAltitudeDeg'> {
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(
    turnedDirection(
      directionFromAzAlt(body.azimuthDeg, body.trueAltitudeDeg),
      latitudeDeg,
      seconds,
    ),
  );
  return {
    azimuthDeg,
    altitudeDeg: altitudeDeg + refractionDeg(altitudeDeg, refractionScale),
    trueAltitudeDeg: altitudeDeg,
  };
}

const radiansPerArcsec = Math.PI / (180 * 3600);

/**
 * The geographic latitude for which a frame was made: the altitude of the celestial pole of its date.
 * Precession of the pole (IERS Conventions 2010, eq. 5.16, to the second power of time); nutation is
 * left out, so good to 10″. It lets a frame be turned that was made for a wrongly entered place.
 */
export function latitudeOfFrameDeg(frame: SkyFrame): number {
  const centuries = frame.yearsFromJ2000 / 100;
  const x = (2004.1919 * centuries - 0.4298 * centuries ** 2) * radiansPerArcsec;
  const y = (-0.0259 * centuries - 22.4073 * centuries ** 2) * radiansPerArcsec;
  const z = Math.sqrt(1 - x * x - y * y);
  const m = frame.icrsToLocal;
  const component = (row: number): number =>
    (m[row] ?? NaN) * x + (m[row + 1] ?? NaN) * y + (m[row + 2] ?? NaN) * z;
  return radiansToDegrees(Math.atan2(component(6), Math.hypot(component(0), component(3))));
}
