import { degreesToRadians } from '../units/angle';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import type { CatalogueStar, StarCatalogue } from '../sky/catalogue';

/** A star as the eye sees it: components closer than it can part are one. */
export type MergedStar = {
  /** Of the brighter component, whose place it takes. */
  hip: number;
  /** Position of the brighter component in the catalogue. */
  index: number;
  /** HIP numbers of all components, brightest first. */
  components: readonly number[];
  /** IAU name, else Bayer letter and constellation, else HIP number. */
  name: string;
  /** Whether it has an IAU name or a Bayer letter. */
  named: boolean;
  /** Joint V of the components. */
  magnitude: number;
  largeAmplitudeVariable: boolean;
};

/** Components this close are one star to the naked eye. */
export const mergingDistanceArcmin = 3;

const known = new WeakMap<StarCatalogue, readonly MergedStar[]>();

/**
 * The catalogue with close components joined, in the catalogue's order of the brighter ones.
 * Reckoned at J2000.0: components that belong together move together.
 */
export function mergedStars(catalogue: StarCatalogue): readonly MergedStar[] {
  const before = known.get(catalogue);
  if (before !== undefined) return before;
  const { stars } = catalogue;
  const groupOf = joinClose(stars);
  const groups = new Map<number, number[]>();
  for (let index = 0; index < stars.length; index++) {
    const group = groups.get(groupOf(index));
    if (group === undefined) groups.set(groupOf(index), [index]);
    else group.push(index);
  }
  const merged = [...groups.values()].map((group) => join(stars, group));
  known.set(catalogue, merged);
  return merged;
}

/** The star that a component's HIP number belongs to. */
export function mergedStarOf(catalogue: StarCatalogue, hip: number): MergedStar | undefined {
  return mergedStars(catalogue).find((star) => star.components.includes(hip));
}

/** V of several stars seen as one. */
export const jointMagnitude = (magnitudes: readonly number[]): number =>
  magnitudes.length === 1
    ? (magnitudes[0] ?? NaN)
    : -2.5 * Math.log10(magnitudes.reduce((sum, m) => sum + 10 ** (-0.4 * m), 0));

function join(stars: readonly CatalogueStar[], group: readonly number[]): MergedStar {
  const components = group
    .flatMap((index) => {
      const star = stars[index];
      return star === undefined ? [] : [{ star, index }];
    })
    .sort((a, b) => a.star.magnitude - b.star.magnitude);
  const [brightest] = components;
  if (brightest === undefined) throw new Error('a group without a star');
  const withName = components.find(({ star }) => star.name !== null)?.star;
  const withLetter = components.find(({ star }) => star.bayer !== '')?.star;
  return {
    hip: brightest.star.hip,
    index: brightest.index,
    components: components.map(({ star }) => star.hip),
    name:
      withName?.name ??
      (withLetter
        ? `${withLetter.bayer} ${withLetter.constellation}`
        : `HIP ${brightest.star.hip}`),
    named: withName !== undefined || withLetter !== undefined,
    magnitude: jointMagnitude(components.map(({ star }) => star.magnitude)),
    largeAmplitudeVariable: components.some(({ star }) => star.largeAmplitudeVariable),
  };
}

/** Single linkage: every pair within the distance is joined. Gives each index its group's root. */
function joinClose(stars: readonly CatalogueStar[]): (index: number) => number {
  const parent = stars.map((_, index) => index);
  const root = (index: number): number => {
    let at = index;
    for (let up = parent[at]; up !== undefined && up !== at; up = parent[at]) at = up;
    return at;
  };
  // In order of declination, so that only neighbours in it need be compared.
  const ordered = stars
    .map((star, index) => ({ index, decDeg: star.decDeg, direction: directionOf(star) }))
    .sort((a, b) => a.decDeg - b.decDeg);
  const limitDeg = mergingDistanceArcmin / 60;
  const leastDot = Math.cos(degreesToRadians(2 * limitDeg));
  ordered.forEach((a, i) => {
    for (let j = i + 1; j < ordered.length; j++) {
      const b = ordered[j];
      if (b === undefined || b.decDeg - a.decDeg > limitDeg) break;
      const [u, v] = [a.direction, b.direction];
      // The cheap test first; the exact one settles it.
      if (u[0] * v[0] + u[1] * v[1] + u[2] * v[2] < leastDot) continue;
      if (separationDeg(u, v) <= limitDeg) {
        const [one, other] = [root(a.index), root(b.index)];
        parent[Math.max(one, other)] = Math.min(one, other);
      }
    }
  });
  return root;
}

/** Any right-handed frame serves for separations. */
const directionOf = (star: CatalogueStar): Vector3 => directionFromAzAlt(star.raDeg, star.decDeg);
