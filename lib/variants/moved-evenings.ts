import type { StarCatalogue } from '../sky/catalogue';
import { instantOfLocalTime } from '../sky/local-time';
import type { Scenario } from '../pointing/scenario';
import { nightAt } from './night';
import type { Random } from './random';

/** How far the teacher's instant is moved at most unless the teacher says otherwise. */
export const defaultWindowMinutes = 40;

/** Moved evenings that one seed looks at. */
export const tries = 8;
/** Draws of given star, clouds or proposals from them before the nearest to the window is taken. */
const draws = 3 * tries;
/** Variants of one family differ by at most this in what blind picking earns, where the sky allows. */
export const difficultyHalfWidth = 0.12;

export type Evening = ReturnType<typeof nightAt>;

/** The teacher's evening and a few others within the window. Each sky is worked out when first asked for. */
export type MovedEvenings = {
  base: () => Evening;
  moved: (attempt: number) => Evening;
  /** All through the window, the teacher's instant first, then ever farther from it. */
  throughout: () => Generator<Evening>;
};

/** Between two evenings of a search: in it the sky turns by 2.5°, and the Sun sinks by as much at most. */
const searchStepMinutes = 10;

/** @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those. */
export function movedEvenings(
  scenario: Scenario,
  windowMinutes: number,
  random: Random,
  catalogue: StarCatalogue,
): MovedEvenings {
  const time = instantOfLocalTime(scenario.localTime, scenario.timeZone);
  if (!time.ok) throw new RangeError(`not a local time: ${scenario.localTime}`);
  const baseMs = Date.parse(time.instant);
  const made = new Map<number, Evening>();
  const at = (minutes: number): Evening => {
    const evening =
      made.get(minutes) ??
      nightAt(scenario, new Date(baseMs + minutes * 60_000).toISOString(), catalogue);
    made.set(minutes, evening);
    return evening;
  };
  const offsets = Array.from({ length: tries }, () =>
    random.integer(-Math.floor(windowMinutes), Math.floor(windowMinutes)),
  );
  function* throughout(): Generator<Evening> {
    yield at(0);
    for (let minutes = searchStepMinutes; minutes <= windowMinutes; minutes += searchStepMinutes) {
      yield at(-minutes);
      yield at(minutes);
    }
  }
  return { base: () => at(0), moved: (attempt: number) => at(offsets[attempt] ?? 0), throughout };
}

/**
 * The same with evenings that will do in place of those that will not: the next of the seed's, else the
 * first of the whole window. Where none will do, as they are.
 */
export function movedToServe(
  { moved, throughout }: MovedEvenings,
  willDo: (evening: Evening) => boolean,
): MovedEvenings['moved'] {
  let searched: Evening | null | undefined;
  const search = (): Evening | null => {
    for (const evening of throughout()) if (willDo(evening)) return evening;
    return null;
  };
  return (attempt) => {
    for (let next = 0; next < tries; next++) {
      const evening = moved((attempt + next) % tries);
      if (willDo(evening)) return evening;
    }
    searched = searched === undefined ? search() : searched;
    return searched ?? moved(attempt);
  };
}

/** The first candidate within the family's difficulty window, else the one nearest to it. */
export function nearestCandidate<Candidate extends { chance: number | null }>(
  moved: MovedEvenings['moved'],
  target: number | null,
  candidateFrom: (evening: Evening) => Candidate | null,
): Candidate | null {
  let nearest: Candidate | null = null;
  let distance = Infinity;
  for (let draw = 0; draw < draws; draw++) {
    const candidate = candidateFrom(moved(draw % tries));
    if (candidate === null) continue;
    const off =
      target === null || candidate.chance === null ? 0 : Math.abs(candidate.chance - target);
    if (off <= difficultyHalfWidth) return candidate;
    if (off < distance) [nearest, distance] = [candidate, off];
  }
  return nearest;
}
