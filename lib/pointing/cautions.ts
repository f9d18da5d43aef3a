import { capitalised } from '../wording/capital';
import { degreesToRadians } from '../units/angle';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { horizonAltitudeDeg } from '../sky/horizon';
import type { Caution } from './answer-key';
import type { Scenario } from './scenario';
import type { SeenSky, SeenStar } from './seen-sky';
import { deadBand } from './usable-stars';

/** Common practice, no source: farther off or fainter than this, nothing is mistaken for the star. */
export const lookAlikeDistanceDeg = 10;
export const lookAlikeFainterBy = 0.7;

/** Cosine of a little more than the distance: a cheap first test. */
const leastAlignment = Math.cos(degreesToRadians(lookAlikeDistanceDeg + 0.001));

/** Neighbours that can be seen and whose light can be relied on, brightest first. */
export type LookAlikes = {
  entries: readonly (Pick<Caution, 'neighbour' | 'neighbourName'> &
    Pick<SeenStar, 'direction' | 'looksMagnitude'>)[];
  /** Their directions once more, three numbers each, for going through thousands of them. */
  directions: Float64Array;
};

/**
 * All of the sky that could be taken for something else: list it once, then ask star by star. The
 * rule's "that is up" is read as "that can be seen": nobody takes for the star, and nobody can point
 * at, what stands behind the skyline or a cloud or is too faint for the eye.
 */
export function lookAlikesOf(
  sky: SeenSky,
  scenario: Pick<Scenario, 'sky' | 'horizon' | 'clouds'>,
): LookAlikes {
  const canBeSeen = seenFrom(sky, scenario);
  const stars = sky.stars
    .filter((star) => !star.largeAmplitudeVariable && canBeSeen(star))
    .map(({ hip, name, direction, looksMagnitude }) => ({
      neighbour: `hip-${hip}` as const,
      neighbourName: name,
      direction,
      looksMagnitude,
    }));
  const planets = sky.planets.filter(canBeSeen).map(({ body, direction, looksMagnitude }) => ({
    neighbour: body,
    neighbourName: capitalised(body),
    direction,
    looksMagnitude,
  }));
  const entries = [...stars, ...planets].sort((a, b) => a.looksMagnitude - b.looksMagnitude);
  return { entries, directions: Float64Array.from(entries.flatMap((entry) => entry.direction)) };
}

type Placed = Pick<SeenStar, 'azimuthDeg' | 'altitudeDeg' | 'direction' | 'looksMagnitude'>;

/** Whether something is bright enough for the eye, with neither ground, skyline nor cloud before it. */
function seenFrom(
  { nakedEyeLimit }: Pick<SeenSky, 'nakedEyeLimit'>,
  { sky, horizon, clouds }: Pick<Scenario, 'sky' | 'horizon' | 'clouds'>,
): (placed: Placed) => boolean {
  const patches = clouds.map(({ azimuthDeg, altitudeDeg, radiusDeg }) => ({
    centre: directionFromAzAlt(azimuthDeg, altitudeDeg),
    radiusDeg,
  }));
  const behindCloud = (direction: Vector3): boolean =>
    patches.some(({ centre, radiusDeg }) => separationDeg(direction, centre) <= radiusDeg);
  return ({ azimuthDeg, altitudeDeg, direction, looksMagnitude }) =>
    altitudeDeg > 0 &&
    // The limit is for the zenith, where one air mass is looked through already.
    looksMagnitude - sky.extinction <= nakedEyeLimit &&
    altitudeDeg > horizonAltitudeDeg(horizon, azimuthDeg) &&
    !behindCloud(direction);
}

/**
 * What could be mistaken for a star: whatever within 10° looks brighter than it or less than 0.7 mag
 * fainter. Most confusing, that is brightest, first. None for a star that is not up.
 */
export function cautionsFor(
  star: Pick<SeenStar, 'hip' | 'direction' | 'looksMagnitude' | 'altitudeDeg'>,
  { entries, directions }: LookAlikes,
): Caution[] {
  const cautions: Caution[] = [];
  if (star.altitudeDeg <= 0) return cautions;
  const [x, y, z] = star.direction;
  const self = `hip-${star.hip}`;
  for (let at = 0, i = 0; at < directions.length; at += 3, i++) {
    const alignment =
      x * (directions[at] ?? 0) + y * (directions[at + 1] ?? 0) + z * (directions[at + 2] ?? 0);
    if (alignment < leastAlignment) continue;
    const other = entries[i];
    if (other === undefined || other.neighbour === self) continue;
    const fainterByMagnitudes = other.looksMagnitude - star.looksMagnitude;
    if (fainterByMagnitudes >= lookAlikeFainterBy) break;
    const apartDeg = separationDeg(star.direction, other.direction);
    if (apartDeg > lookAlikeDistanceDeg) continue;
    cautions.push({
      neighbour: other.neighbour,
      neighbourName: other.neighbourName,
      separationDeg: apartDeg,
      fainterByMagnitudes,
    });
  }
  return cautions;
}

/** Whether a caution holds beyond the dead band, so that a student may be expected to see it. */
export const isClearCaution = (caution: Caution): boolean =>
  caution.separationDeg <= lookAlikeDistanceDeg - deadBand.angleDeg &&
  caution.fainterByMagnitudes < lookAlikeFainterBy - deadBand.magnitudes;
