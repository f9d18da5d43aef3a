import {
  AstroTime,
  BaryState,
  Body,
  Equator,
  Horizon,
  Illumination,
  observerAt,
  Rotation_EQD_HOR,
  Rotation_EQJ_EQD,
  type GeographicPlace,
  type Observer,
} from './astronomy';
import { refractionDeg, refractionScale } from './refraction';
import type { BodyPlace, NakedEyePlanet, SkyFrame } from './sky-frame';

const planetBodies: readonly (readonly [NakedEyePlanet, Body])[] = [
  ['mercury', Body.Mercury],
  ['venus', Body.Venus],
  ['mars', Body.Mars],
  ['jupiter', Body.Jupiter],
  ['saturn', Body.Saturn],
];

/** Astronomical unit in kilometres (IAU 2012) and seconds of a day: AU/day → light speed. */
const speedOfLightAuPerDay = (299_792.458 * 86_400) / 149_597_870.7;

/**
 * The sky's frame at an instant (UTC) and place. Air pressure in hPa and temperature in °C change
 * refraction only. Sun and Moon within 2.5″ and 3.3″ of JPL DE405 before refraction.
 *
 * @throws {RangeError} for an instant that is none or a place outside ±90°/±180°: parse first.
 */
export function skyFrameAt(input: {
  instant: Date | string;
  place: GeographicPlace;
  pressureHpa?: number;
  temperatureC?: number;
}): SkyFrame {
  const date = new Date(input.instant);
  if (Number.isNaN(date.getTime()))
    throw new RangeError(`not an instant: ${String(input.instant)}`);
  const observer = observerAt(input.place);
  const time = new AstroTime(date);
  const scale = refractionScale(input.pressureHpa, input.temperatureC);
  const place = (body: Body): BodyPlace => bodyPlace(body, time, observer, scale);
  const velocity = BaryState(Body.Earth, time);

  return {
    instant: date.toISOString(),
    yearsFromJ2000: time.tt / 365.25,
    icrsToLocal: icrsToLocal(time, observer),
    earthVelocityOverC: [
      velocity.vx / speedOfLightAuPerDay,
      velocity.vy / speedOfLightAuPerDay,
      velocity.vz / speedOfLightAuPerDay,
    ],
    refractionScale: scale,
    sun: place(Body.Sun),
    moon: {
      ...place(Body.Moon),
      illuminatedFraction: Illumination(Body.Moon, time).phase_fraction,
    },
    planets: planetBodies.map(([name, body]) => ({ body: name, ...place(body) })),
  };
}

/** Row-major, ICRS → (east, north, up). The library's horizon frame is (north, west, up). */
function icrsToLocal(time: AstroTime, observer: Observer): number[] {
  const toDate = matrixRows(Rotation_EQJ_EQD(time).rot);
  const [north, west, up] = matrixRows(Rotation_EQD_HOR(time, observer).rot);
  const east: Row = [-west[0], -west[1], -west[2]];
  return [east, north, up].flatMap((row) =>
    ([0, 1, 2] as const).map(
      (column) =>
        row[0] * toDate[0][column] + row[1] * toDate[1][column] + row[2] * toDate[2][column],
    ),
  );
}

type Row = readonly [number, number, number];

/** The library stores rot[from][to]; rows that multiply a column vector are its transpose. */
function matrixRows(rot: number[][]): [Row, Row, Row] {
  const row = (to: number): Row => {
    const [x, y, z] = rot.map((from) => from[to]);
    if (x === undefined || y === undefined || z === undefined) {
      throw new TypeError('a rotation needs nine numbers');
    }
    return [x, y, z];
  };
  return [row(0), row(1), row(2)];
}

/** Topocentric, with aberration and light time. */
function bodyPlace(body: Body, time: AstroTime, observer: Observer, scale: number): BodyPlace {
  const equator = Equator(body, time, observer, true, true);
  const { azimuth, altitude } = Horizon(time, observer, equator.ra, equator.dec);
  return {
    azimuthDeg: azimuth,
    altitudeDeg: altitude + refractionDeg(altitude, scale),
    trueAltitudeDeg: altitude,
    magnitude: Illumination(body, time).mag,
  };
}
