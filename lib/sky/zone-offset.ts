import { Temporal } from 'temporal-polyfill';

/** What a careful person enters for a zone: its offset from UTC without summer time, and whether that is on. */
export type ZoneOffset = {
  standardMinutes: number;
  summerTime: boolean;
  /** What summer time adds there: an hour nearly everywhere, half of one on Lord Howe Island. */
  summerTimeMinutes: number;
};

/** Where the year knows no summer time, the switch of a computer adds an hour all the same. */
const usualSummerTimeMinutes = 60;

/**
 * The clock rules of an IANA zone at an instant (UTC, ISO 8601). Standard is the smaller offset of that
 * year's January and July, so that zones whose law calls summer the standard read as people say it.
 *
 * @throws {RangeError} for an instant or a zone that is none.
 */
export function zoneOffsetAt(instant: string, timeZone: string): ZoneOffset {
  const at = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  const inMonth = (month: number) => offsetMinutes(at.with({ month, day: 15 }));
  const now = offsetMinutes(at);
  const offsets = [inMonth(1), inMonth(7), now];
  const standardMinutes = Math.min(...offsets);
  const summerTime = now > standardMinutes;
  const added = (summerTime ? now : Math.max(...offsets)) - standardMinutes;
  return { standardMinutes, summerTime, summerTimeMinutes: added || usualSummerTimeMinutes };
}

const offsetMinutes = (at: Temporal.ZonedDateTime): number => at.offsetNanoseconds / 60e9;
