import { Temporal } from 'temporal-polyfill';

/** What a careful person enters for a zone: its offset from UTC without summer time, and whether that is on. */
export type ZoneOffset = { standardMinutes: number; summerTime: boolean };

/**
 * The clock rules of an IANA zone at an instant (UTC, ISO 8601). Standard is the smaller offset of that
 * year's January and July, so that zones whose law calls summer the standard read as people say it.
 *
 * @throws {RangeError} for an instant or a zone that is none.
 */
export function zoneOffsetAt(instant: string, timeZone: string): ZoneOffset {
  const at = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  const inMonth = (month: number) => offsetMinutes(at.with({ month, day: 15 }));
  const standardMinutes = Math.min(inMonth(1), inMonth(7), offsetMinutes(at));
  return { standardMinutes, summerTime: offsetMinutes(at) > standardMinutes };
}

const offsetMinutes = (at: Temporal.ZonedDateTime): number => at.offsetNanoseconds / 60e9;
