import { Temporal } from 'temporal-polyfill';
import {
  AstroTime,
  Body,
  Equator,
  Horizon,
  observerAt,
  SearchHourAngle,
  type GeographicPlace,
  type Observer,
} from './astronomy';

/** True altitude of the Sun's centre in degrees. Definitions of the US Naval Observatory. */
export const sunAltitudeAtDeg = {
  riseAndSet: -0.833,
  civil: -6,
  nautical: -12,
  astronomical: -18,
} as const;

/** Instants, UTC, ISO 8601; null where the Sun does not cross that altitude in this night. */
export type NightTimes = {
  sunset: string | null;
  civilDusk: string | null;
  nauticalDusk: string | null;
  astronomicalDusk: string | null;
  astronomicalDawn: string | null;
  nauticalDawn: string | null;
  civilDawn: string | null;
  sunrise: string | null;
};

/**
 * The night that begins on a local date ("2026-12-05"): from the Sun's upper transit of that date
 * to the next one, so that a sunset after midnight still belongs to the evening before. Correct to
 * about a second of the Sun's place; refraction and the observer's height change it by more.
 *
 * @throws {RangeError} for a date, a zone or a place that is none: parse first.
 */
export function duskAndDawn(input: {
  place: GeographicPlace;
  localDate: string;
  timeZone: string;
}): NightTimes {
  const observer = observerAt(input.place);
  const noonMs = Temporal.PlainDate.from(input.localDate).toZonedDateTime({
    timeZone: input.timeZone,
    plainTime: '12:00',
  }).epochMilliseconds;
  // The transit nearest to the clock's noon, however far the zone is from the place's own time.
  const noonBefore = new AstroTime(new Date(noonMs - 12 * hourMs));
  const transit = SearchHourAngle(Body.Sun, observer, 0, noonBefore).time;
  const midnight = SearchHourAngle(Body.Sun, observer, 12, transit).time;
  const nextTransit = SearchHourAngle(Body.Sun, observer, 0, midnight).time;

  const down = (altitudeDeg: number) => crossing(observer, altitudeDeg, transit, midnight);
  const up = (altitudeDeg: number) => crossing(observer, altitudeDeg, nextTransit, midnight);
  return {
    sunset: down(sunAltitudeAtDeg.riseAndSet),
    civilDusk: down(sunAltitudeAtDeg.civil),
    nauticalDusk: down(sunAltitudeAtDeg.nautical),
    astronomicalDusk: down(sunAltitudeAtDeg.astronomical),
    astronomicalDawn: up(sunAltitudeAtDeg.astronomical),
    nauticalDawn: up(sunAltitudeAtDeg.nautical),
    civilDawn: up(sunAltitudeAtDeg.civil),
    sunrise: up(sunAltitudeAtDeg.riseAndSet),
  };
}

const hourMs = 3_600_000;

/** True altitude of the Sun's centre, topocentric, in degrees. */
export function sunAltitudeDeg(place: GeographicPlace, instant: Date): number {
  return altitudeOfSunDeg(observerAt(place), new AstroTime(instant));
}

function altitudeOfSunDeg(observer: Observer, time: AstroTime): number {
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, ra, dec).altitude;
}

/**
 * When the Sun stands at an altitude between a time it is above it (`high`) and one it is below it
 * (`low`, earlier or later), by bisection to a millisecond; null when it is not.
 */
function crossing(
  observer: Observer,
  altitudeDeg: number,
  high: AstroTime,
  low: AstroTime,
): string | null {
  const isAbove = (ms: number): boolean =>
    altitudeOfSunDeg(observer, new AstroTime(new Date(ms))) > altitudeDeg;
  let above = high.date.getTime();
  let below = low.date.getTime();
  if (!isAbove(above) || isAbove(below)) return null;
  while (Math.abs(above - below) > 1) {
    const middle = Math.round((above + below) / 2);
    if (isAbove(middle)) above = middle;
    else below = middle;
  }
  return new Date(below).toISOString();
}
