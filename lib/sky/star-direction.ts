import type { Vector3 } from '../units/vector';
import type { StarCatalogue } from './catalogue';
import type { SkyFrame } from './sky-frame';
import { placeCatalogue } from './star-places';

/** A catalogue of one star each, so that one can be placed without the thousands beside it. */
const singles = new WeakMap<StarCatalogue, Map<number, StarCatalogue>>();

/**
 * Where one star stands in a frame: unit vector (east, north, up) without refraction, exactly as
 * `placeCatalogue` gives it. Null for a HIP number that is not in the catalogue.
 */
export function starDirection(
  catalogue: StarCatalogue,
  frame: SkyFrame,
  hip: number,
): Vector3 | null {
  const single = singleOf(catalogue, hip);
  if (single === null) return null;
  const [x = NaN, y = NaN, z = NaN] = placeCatalogue(single, frame).directions;
  return [x, y, z];
}

function singleOf(catalogue: StarCatalogue, hip: number): StarCatalogue | null {
  let known = singles.get(catalogue);
  if (known === undefined) {
    known = new Map();
    singles.set(catalogue, known);
  }
  const before = known.get(hip);
  if (before !== undefined) return before;
  const star = catalogue.stars.find((one) => one.hip === hip);
  if (star === undefined) return null;
  const made: StarCatalogue = { version: catalogue.version, stars: [star], figures: [] };
  known.set(hip, made);
  return made;
}
