import { skyFrameAt } from '../sky/frame-at';
import { sunAltitudeAtDeg } from '../sky/twilight';
import { eveningOf, momentsOf, type NightSite, type NoEvening } from './evening';

/** One evening of the coming two weeks, as far as Sun and Moon decide. */
export type FortnightEvening = {
  localDate: string;
  sunset: string | null;
  /** Why no sunset is given; null where one is. */
  noSunset: NoEvening | 'sun-stays-down' | null;
  /** Nautical dusk. */
  darkFrom: string | null;
  /** Of the evening until packing up, with the Sun 12° down or more. */
  darkMinutes: number;
  /** Of these, with the Moon down. */
  moonlessMinutes: number;
  illuminatedFraction: number;
};

const nights = 14;
const stepMinutes = 10;

export type Fortnight = {
  evenings: FortnightEvening[];
  best: string | null;
  /** Where none of them gets dark: the first later evening that does, within a year. */
  nextDark: string | null;
};

/**
 * The coming fourteen evenings from a local date on, each until the same wall clock, and the best of them:
 * the most dark minutes without the Moon, then the most dark minutes with the thinner Moon. Null where no
 * evening gets dark. Says nothing of weather.
 */
export function fortnightFrom(
  site: NightSite,
  { localDate, endsAt }: { localDate: string; endsAt: string },
): Fortnight {
  const evenings = Array.from({ length: nights }, (_, day) =>
    eveningBySunAndMoon(site, dayAfter(localDate, day), endsAt),
  );
  const [best] = [...evenings].sort(darkestFirst);
  if (best !== undefined && best.darkMinutes > 0) {
    return { evenings, best: best.localDate, nextDark: null };
  }
  return { evenings, best: null, nextDark: nextDarkAfter(site, localDate, endsAt) };
}

/** Looked for week by week, then day by day: darkness comes and goes with the season. */
function nextDarkAfter(site: NightSite, localDate: string, endsAt: string): string | null {
  const isDark = (day: number): boolean =>
    eveningBySunAndMoon(site, dayAfter(localDate, day), endsAt).darkMinutes > 0;
  for (let week = nights; week <= 366; week += 7) {
    if (!isDark(week)) continue;
    let day = week;
    while (day > nights && isDark(day - 1)) day -= 1;
    return dayAfter(localDate, day);
  }
  return null;
}

const darkestFirst = (a: FortnightEvening, b: FortnightEvening): number =>
  b.moonlessMinutes - a.moonlessMinutes ||
  b.darkMinutes * (1 - b.illuminatedFraction) - a.darkMinutes * (1 - a.illuminatedFraction);

/** Calendar days, whatever the clocks do. */
const dayAfter = (localDate: string, days: number): string =>
  new Date(Date.parse(`${localDate}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

function eveningBySunAndMoon(site: NightSite, localDate: string, endsAt: string): FortnightEvening {
  const read = eveningOf(site, { localDate, endsAt });
  if (!read.ok) {
    // The Moon is lit alike wherever one stands; late in the day of Greenwich is near enough.
    const { moon } = skyFrameAt({ instant: `${localDate}T20:00:00Z`, place: site.place });
    return {
      localDate,
      sunset: null,
      noSunset: read.reason,
      darkFrom: null,
      darkMinutes: 0,
      moonlessMinutes: 0,
      illuminatedFraction: moon.illuminatedFraction,
    };
  }
  const { times, moon } = read.evening;
  let [dark, moonless] = [0, 0];
  for (const instant of momentsOf(read.evening, {
    stepMinutes,
    timeZone: site.timeZone,
  })) {
    const frame = skyFrameAt({ instant, place: site.place });
    if (frame.sun.trueAltitudeDeg > sunAltitudeAtDeg.nautical) continue;
    dark += stepMinutes;
    if (frame.moon.altitudeDeg <= 0) moonless += stepMinutes;
  }
  return {
    localDate,
    sunset: times.sunset,
    darkFrom: times.nauticalDusk,
    noSunset: times.sunset === null ? 'sun-stays-down' : null,
    darkMinutes: dark,
    moonlessMinutes: moonless,
    illuminatedFraction: moon.illuminatedFraction,
  };
}
