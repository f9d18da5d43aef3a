import { skyFrameAt } from '../../../sky/frame-at';
import { localTimeOfInstant } from '../../../sky/local-time';
import type { SkyFrame } from '../../../sky/sky-frame';
import { duskAndDawn, sunAltitudeDeg } from '../../../sky/twilight';
import type { Scenario } from '../../../pointing/scenario';
import type { Random } from '../../random';

/** The afternoon and the dusk of one day at a place. */
export type DayAndDusk = {
  daysLater: number;
  afternoon: { localTime: string; frame: SkyFrame };
  dusk: { localTime: string; frame: SkyFrame };
};

/** Where the Sun stands in the afternoon of a task before it is moved within the window, degrees. */
const usualSunDeg = 13;
/** Higher, too little of the scene lies by it; lower, and the day is over. */
const highestSunDeg = 21;
const lowestSunDeg = 3.5;
/** The scene's Sun goes round the horizon nearer to a pole: there the nearest such parallel is taken. */
const farthestLatitudeDeg = 78;
const stepMinutes = 5;
const mostAfternoonMinutes = 9 * 60;
const minuteMs = 60_000;

/**
 * The scenario's day, from the afternoon to the end of civil dusk; where on that date the Sun does not
 * both rise and set, the nearest later day on which it does.
 *
 * @throws {Error} when no day of a year will do: there is none such within the latitudes used.
 */
export function drawDayAndDusk(
  scenario: Scenario,
  windowMinutes: number,
  random: Random,
): DayAndDusk {
  const place = {
    ...scenario.place,
    latitudeDeg: Math.min(
      farthestLatitudeDeg,
      Math.max(-farthestLatitudeDeg, scenario.place.latitudeDeg),
    ),
  };
  const { timeZone } = scenario;
  const window = Math.min(40, Math.floor(windowMinutes));
  const shift = random.integer(-window, window);
  const pastDusk = random.integer(1, 9);
  const firstDate = Date.parse(`${scenario.localTime.slice(0, 10)}T00:00Z`);
  for (let daysLater = 0; daysLater <= 366; daysLater += daysLater < 3 ? 1 : 3) {
    const localDate = new Date(firstDate + daysLater * 86_400_000).toISOString().slice(0, 10);
    const { sunset, civilDusk } = duskAndDawn({ place, localDate, timeZone });
    if (sunset === null || civilDusk === null) continue;
    const afternoonMs = afternoonOf(place, Date.parse(sunset), shift);
    if (afternoonMs === null) continue;
    const at = (ms: number) => {
      const instant = new Date(Math.round(ms / minuteMs) * minuteMs).toISOString();
      return {
        localTime: localTimeOfInstant(instant, timeZone),
        frame: skyFrameAt({ instant, place }),
      };
    };
    return {
      daysLater,
      afternoon: at(afternoonMs),
      dusk: at(Date.parse(civilDusk) + pastDusk * minuteMs),
    };
  }
  throw new Error('the Sun does not rise and set on any day of the year');
}

/** When the Sun has sunk to its usual height, moved; null where it stays too low all day. */
function afternoonOf(
  place: Scenario['place'],
  sunsetMs: number,
  shiftMinutes: number,
): number | null {
  const heightAt = (minutes: number): number =>
    sunAltitudeDeg(place, new Date(sunsetMs - minutes * minuteMs));
  let usual: number | null = null;
  let highest = { minutes: 0, deg: -90 };
  const good: number[] = [];
  for (let minutes = 0; minutes <= mostAfternoonMinutes; minutes += stepMinutes) {
    const deg = heightAt(minutes);
    // Before noon it would sink again.
    if (deg < highest.deg) break;
    highest = { minutes, deg };
    if (deg >= lowestSunDeg && deg <= highestSunDeg) good.push(minutes);
    if (usual === null && deg >= usualSunDeg) usual = minutes;
  }
  const [latest] = good;
  const earliest = good.at(-1);
  if (latest === undefined || earliest === undefined) return null;
  const wanted = (usual ?? highest.minutes) - shiftMinutes;
  return sunsetMs - Math.min(earliest, Math.max(latest, wanted)) * minuteMs;
}
