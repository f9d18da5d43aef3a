import { degreesToRadians } from '../units/angle';
import { angleFromAxisDeg } from './angle-table';
import type { StarCatalogue } from './catalogue';
import { refractionOfDirectionDeg } from './refraction';
import type { SkyFrame } from './sky-frame';

/** Where every star of a catalogue stands; index i is the catalogue's star i. */
export type StarPlaces = {
  /** Unit vectors (east, north, up), three numbers a star, without refraction. */
  directions: Float64Array;
  /** From north through east, [0°, 360°). */
  azimuthDeg: Float64Array;
  /** Refracted. */
  altitudeDeg: Float64Array;
};

const radiansPerMas = Math.PI / (180 * 3_600_000);

/**
 * What does not depend on the instant, six numbers a star: the unit vector at J2000.0 and its yearly
 * change by proper motion, ICRS axes. Made once a catalogue.
 */
const motions = new WeakMap<StarCatalogue, Float64Array>();

function motionsOf(catalogue: StarCatalogue): Float64Array {
  const known = motions.get(catalogue);
  if (known !== undefined) return known;
  const made = new Float64Array(6 * catalogue.stars.length);
  catalogue.stars.forEach((star, i) => {
    const ra = degreesToRadians(star.raDeg);
    const dec = degreesToRadians(star.decDeg);
    const east = star.pmRaMasYr * radiansPerMas;
    const north = star.pmDecMasYr * radiansPerMas;
    made.set(
      [
        Math.cos(dec) * Math.cos(ra),
        Math.cos(dec) * Math.sin(ra),
        Math.sin(dec),
        -east * Math.sin(ra) - north * Math.sin(dec) * Math.cos(ra),
        east * Math.cos(ra) - north * Math.sin(dec) * Math.sin(ra),
        north * Math.cos(dec),
      ],
      6 * i,
    );
  });
  motions.set(catalogue, made);
  return made;
}

/** Room for the places of `count` stars, to be filled again and again. */
export function makeStarPlaces(count: number): StarPlaces {
  return {
    directions: new Float64Array(3 * count),
    azimuthDeg: new Float64Array(count),
    altitudeDeg: new Float64Array(count),
  };
}

/**
 * Places the whole catalogue in the local sky: proper motion, annual aberration, then the frame's
 * rotation and refraction. Parallax (at most 0.78″) and diurnal aberration (0.32″) are left out:
 * within 0.85″ of ERFA before refraction. Give `into` (of the catalogue's size) to allocate nothing.
 */
export function placeCatalogue(
  catalogue: StarCatalogue,
  frame: SkyFrame,
  into: StarPlaces = makeStarPlaces(catalogue.stars.length),
): StarPlaces {
  const motion = motionsOf(catalogue);
  const { directions, azimuthDeg, altitudeDeg } = into;
  const [xx = 0, xy = 0, xz = 0, yx = 0, yy = 0, yz = 0, zx = 0, zy = 0, zz = 0] =
    frame.icrsToLocal;
  const [vx, vy, vz] = frame.earthVelocityOverC;
  const years = frame.yearsFromJ2000;
  const scale = frame.refractionScale;

  for (let i = 0, m = 0; i < azimuthDeg.length; i += 1, m += 6) {
    const a = (motion[m] ?? 0) + years * (motion[m + 3] ?? 0) + vx;
    const b = (motion[m + 1] ?? 0) + years * (motion[m + 4] ?? 0) + vy;
    const c = (motion[m + 2] ?? 0) + years * (motion[m + 5] ?? 0) + vz;
    const shorten = 1 / Math.sqrt(a * a + b * b + c * c);
    const east = (xx * a + xy * b + xz * c) * shorten;
    const north = (yx * a + yy * b + yz * c) * shorten;
    const up = (zx * a + zy * b + zz * c) * shorten;
    const level = Math.sqrt(east * east + north * north);
    const trueAltitudeDeg = 90 - angleFromAxisDeg(up, level, 1);
    directions[3 * i] = east;
    directions[3 * i + 1] = north;
    directions[3 * i + 2] = up;
    const fromNorthDeg = angleFromAxisDeg(north, Math.abs(east), level);
    const westwardDeg = 360 - fromNorthDeg;
    // A hair west of north, the difference rounds to 360 itself, which is no azimuth.
    azimuthDeg[i] = east < 0 && westwardDeg < 360 ? westwardDeg : fromNorthDeg;
    altitudeDeg[i] = trueAltitudeDeg + refractionOfDirectionDeg(trueAltitudeDeg, up, level, scale);
  }
  return into;
}
