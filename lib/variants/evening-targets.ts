import type { SkyLight } from '../alignment/lights';
import type { Evening, Target } from '../faults/faulty-evening';
import { ratePair } from '../pointing/rank-pairs';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { separationDeg, directionFromAzAlt, type Vector3 } from '../units/vector';
import type { Night, WeighedStar } from './night';
import type { Random } from './random';

/** The stars that an evening is about. */
export type EveningTargets = Pick<Evening, 'first' | 'second' | 'later' | 'test' | 'mistakable'>;

/** A pair worth this share of the best will do: the evening is about something else. */
const goodEnough = 0.9;
const counts = { later: 2, test: 3 };
/** What is gone to after the alignment stands off both of its stars. */
const wellOffDeg = 15;
/** Below and above, no star is taken for another; degrees. */
const reach = { lowestDeg: 15, highestDeg: 78 };
/** A beginner takes a light for a star when it is not much fainter and stands in the same part of the sky. */
const mistaken = {
  fainterBy: 1,
  nearestDeg: 3,
  farthestDeg: 25,
  planetFarthestDeg: 35,
  planetFaintest: 1.8,
};
const mistakenAtMost = 3;

/** Null where the sky has no two stars, or none to go to afterwards: hardly ever. */
export function drawTargets(random: Random, night: Night): EveningTargets | null {
  const pair = drawPair(random, night);
  if (pair === null) return null;
  const [first, second] = pair;
  const others = random.shuffle(
    night.stars.filter(
      (star) =>
        star.named &&
        inReach(star) &&
        pair.every((one) => separationDeg(one.direction, star.direction) > wellOffDeg),
    ),
  );
  // Those that can be seen go first, in any other sky whatever there is.
  const inOrder = [
    ...others.filter((star) => night.tempting.includes(star)),
    ...others.filter((star) => !night.tempting.includes(star)),
  ].map(targetOf);
  const later = inOrder.slice(0, counts.later);
  const test = inOrder.slice(counts.later, counts.later + counts.test);
  if (later.length === 0 || test.length === 0) return null;
  return {
    first: targetOf(first),
    second: targetOf(second),
    later,
    test,
    mistakable: [takenFor(first, second, night), takenFor(second, first, night)],
  };
}

const targetOf = ({ hip, name }: WeighedStar): Target => ({ hip, name });
const inReach = ({ altitudeDeg }: { altitudeDeg: number }): boolean =>
  altitudeDeg >= reach.lowestDeg && altitudeDeg <= reach.highestDeg;

function drawPair(random: Random, night: Night): readonly [WeighedStar, WeighedStar] | null {
  const [best] = night.pairs;
  const good =
    best === undefined
      ? pairsWhateverTheSky(night)
      : night.pairs.filter((pair) => pair.hitRate >= goodEnough * best.hitRate);
  const drawn = random.pick(good);
  if (drawn === undefined) return null;
  const [one, other] = random
    .shuffle(drawn.stars)
    .map((hip) => night.stars.find((star) => star.hip === hip));
  return one === undefined || other === undefined ? null : [one, other];
}

/** Under cloud, in daylight or between houses the telescope moves as well, and the task is on paper. */
function pairsWhateverTheSky({ scenario: { telescope, eyepiece, settings }, stars }: Night) {
  const up = stars.filter(
    (star) =>
      star.named &&
      star.magnitude <= Math.max(2.5, settings.faintestMagnitude) &&
      star.altitudeDeg >= 20 &&
      star.altitudeDeg <= 70,
  );
  const radius = fieldRadiusArcmin(telescope, eyepiece);
  const rated = up.flatMap((one, i) =>
    up.slice(i + 1).map((other) => ratePair(telescope, radius, one, other)),
  );
  const best = Math.max(0, ...rated.map((pair) => pair.hitRate));
  return rated.filter(
    (pair) => pair.expectedErrorArcmin !== null && pair.hitRate >= goodEnough * best,
  );
}

/** What could be taken for a star, nearest first; not the other one, which would be the two swapped. */
function takenFor(star: WeighedStar, other: WeighedStar, night: Night): SkyLight[] {
  const from = (direction: Vector3): number => separationDeg(star.direction, direction);
  const stars = night.stars
    .filter(
      (one) =>
        one.hip !== other.hip &&
        inReach(one) &&
        one.magnitude <= star.magnitude + mistaken.fainterBy &&
        from(one.direction) >= mistaken.nearestDeg &&
        from(one.direction) <= mistaken.farthestDeg,
    )
    .sort((a, b) => from(a.direction) - from(b.direction))
    .slice(0, mistakenAtMost)
    .map(({ hip }): SkyLight => ({ hip }));
  const planets = night.frame.planets
    .filter(
      (planet) =>
        inReach(planet) &&
        planet.magnitude <= mistaken.planetFaintest &&
        from(directionFromAzAlt(planet.azimuthDeg, planet.altitudeDeg)) <=
          mistaken.planetFarthestDeg,
    )
    .map(({ body }): SkyLight => ({ planet: body }));
  return [...stars, ...planets];
}
