import { Temporal } from 'temporal-polyfill';

export type LocalTimeProblem =
  | 'bad-format'
  | 'no-such-date'
  | 'out-of-range'
  | 'unknown-zone'
  | 'does-not-exist'
  | 'exists-twice'
  | 'offset-does-not-fit';

export type LocalTimeResult =
  /** UTC, ISO 8601. */
  | { ok: true; instant: string }
  | {
      ok: false;
      reason: LocalTimeProblem;
      /** Local times with their offset that may have been meant; each is accepted as it stands. */
      candidates: string[];
    };

/** What one value of ΔT is good for (the Moon is off by less than 0.5′), and zones without odd seconds. */
const firstYear = 1950;
const lastYear = 2100;

const localTimePattern = /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::\d{2})?)([+-]\d{2}:\d{2})?$/;

/**
 * The instant of a wall-clock time such as "2026-12-05T19:30" in an IANA zone. A time that the clocks
 * jump over or show twice is refused, never guessed, with both candidates; so the second of two is
 * asked for with its offset, "2026-11-01T01:30-05:00".
 */
export function instantOfLocalTime(localTime: string, timeZone: string): LocalTimeResult {
  const match = localTimePattern.exec(localTime);
  if (match === null) return refuse('bad-format');
  const [, wallClock = '', offset] = match;
  if (!isTimeZone(timeZone)) return refuse('unknown-zone');

  const wall = plainDateTime(wallClock);
  if (wall === null) return refuse('no-such-date');
  if (wall.year < firstYear || wall.year > lastYear) return refuse('out-of-range');

  const earlier = wall.toZonedDateTime(timeZone, { disambiguation: 'earlier' });
  const later = wall.toZonedDateTime(timeZone, { disambiguation: 'later' });
  if (earlier.equals(later)) {
    return offset === undefined || offset === earlier.offset
      ? accept(earlier)
      : refuse('offset-does-not-fit', earlier);
  }
  // Where the clocks jump forward, the two answers show other times than the one that was asked for.
  if (!earlier.toPlainDateTime().equals(wall)) return refuse('does-not-exist', earlier, later);
  if (offset === undefined) return refuse('exists-twice', earlier, later);
  const meant = [earlier, later].find((candidate) => candidate.offset === offset);
  return meant === undefined ? refuse('offset-does-not-fit', earlier, later) : accept(meant);
}

/**
 * The wall-clock time of an instant (UTC, ISO 8601) in an IANA zone, to the second, in the form that
 * {@link instantOfLocalTime} reads back: seconds only where there are any, the offset only where the
 * hour comes twice.
 *
 * @throws {RangeError} for an instant or a zone that is none.
 */
export function localTimeOfInstant(instant: string, timeZone: string): string {
  const zoned = Temporal.Instant.from(instant)
    .round({ smallestUnit: 'second', roundingMode: 'halfExpand' })
    .toZonedDateTimeISO(timeZone);
  const plain = withoutOffset(zoned);
  const back = instantOfLocalTime(plain, timeZone);
  return back.ok || back.reason !== 'exists-twice' ? plain : plain + zoned.offset;
}

/**
 * The first instant (UTC, ISO 8601) of the day after the one that `instant` falls on in the zone: where
 * the clocks jump over midnight, a day begins later than 00:00.
 *
 * @throws {RangeError} for an instant or a zone that is none.
 */
export function endOfLocalDay(instant: string, timeZone: string): string {
  const today = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate();
  const tomorrow = today.add({ days: 1 }).toZonedDateTime(timeZone);
  return new Date(tomorrow.epochMilliseconds).toISOString();
}

/** Whether the name is an IANA zone that the clock rules know. A bare offset is not. */
export function isTimeZone(name: string): boolean {
  if (!/^[A-Za-z]/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

function plainDateTime(wallClock: string): Temporal.PlainDateTime | null {
  try {
    return Temporal.PlainDateTime.from(wallClock, { overflow: 'reject' });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function withoutOffset(zoned: Temporal.ZonedDateTime): string {
  const plain = zoned.toPlainDateTime();
  return plain.toString({ smallestUnit: plain.second === 0 ? 'minute' : 'second' });
}

function accept(zoned: Temporal.ZonedDateTime): LocalTimeResult {
  return { ok: true, instant: new Date(zoned.epochMilliseconds).toISOString() };
}

function refuse(reason: LocalTimeProblem, ...meant: Temporal.ZonedDateTime[]): LocalTimeResult {
  return {
    ok: false,
    reason,
    candidates: meant.map((candidate) => withoutOffset(candidate) + candidate.offset),
  };
}
