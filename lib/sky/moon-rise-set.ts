import { AstroTime, Body, observerAt, SearchRiseSet, type GeographicPlace } from './astronomy';

/** One passage of the Moon's upper limb over the level horizon. UTC, ISO 8601. */
export type MoonPassage = { kind: 'rise' | 'set'; instant: string };

/**
 * When the Moon rises and sets between two instants, in order; of a level horizon, with the library's
 * 34′ of refraction and the Moon's own half-width. High latitudes may have none for days.
 *
 * @throws {RangeError} for a place that is none: parse first.
 */
export function moonRiseAndSet({
  place,
  from,
  to,
}: {
  place: GeographicPlace;
  from: Date;
  to: Date;
}): MoonPassage[] {
  const observer = observerAt(place);
  const passages: MoonPassage[] = [];
  for (const [kind, direction] of [
    ['rise', 1],
    ['set', -1],
  ] as const) {
    let start = from;
    // A passage is at least hours after the one before; a minute later the search starts anew.
    for (;;) {
      const days = (to.getTime() - start.getTime()) / 86_400_000;
      if (days <= 0) break;
      const found = SearchRiseSet(Body.Moon, observer, direction, new AstroTime(start), days);
      if (found === null) break;
      passages.push({ kind, instant: found.date.toISOString() });
      start = new Date(found.date.getTime() + 60_000);
    }
  }
  return passages.sort((a, b) => a.instant.localeCompare(b.instant));
}
