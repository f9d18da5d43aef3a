import { zoneOffsetAt } from '../sky/zone-offset';

/** A night on which a zone's clocks are put forward or back. */
export type ClockChange = {
  /** UTC, ISO 8601, to the minute: the first instant by the new rule. */
  instant: string;
  /** Ahead of UTC just before and from then on, minutes. */
  beforeMinutes: number;
  afterMinutes: number;
};

const minuteMs = 60_000;
const dayMs = 1440 * minuteMs;
/** Every rule that changes clocks twice a year shows within this. */
const reachDays = 371;
/** No zone has changed its clocks and changed them back within a week. */
const stepDays = 7;

/** The next change of a zone's clocks after an instant (UTC, ISO 8601); null where none comes within a year. */
export function nextClockChange(instant: string, timeZone: string): ClockChange | null {
  const from = Date.parse(instant);
  const before = offsetMinutesAt(from, timeZone);
  for (let day = stepDays; day <= reachDays; day += stepDays) {
    const at = from + day * dayMs;
    if (offsetMinutesAt(at, timeZone) !== before) {
      return narrowed(at - stepDays * dayMs, at, before, timeZone);
    }
  }
  return null;
}

function narrowed(low: number, high: number, before: number, timeZone: string): ClockChange {
  let [last, first] = [
    Math.floor(low / minuteMs) * minuteMs,
    Math.ceil(high / minuteMs) * minuteMs,
  ];
  while (first - last > minuteMs) {
    const middle = Math.round((last + first) / 2 / minuteMs) * minuteMs;
    if (offsetMinutesAt(middle, timeZone) === before) last = middle;
    else first = middle;
  }
  return {
    instant: new Date(first).toISOString(),
    beforeMinutes: before,
    afterMinutes: offsetMinutesAt(first, timeZone),
  };
}

function offsetMinutesAt(ms: number, timeZone: string): number {
  const zone = zoneOffsetAt(new Date(ms).toISOString(), timeZone);
  return zone.standardMinutes + (zone.summerTime ? zone.summerTimeMinutes : 0);
}
