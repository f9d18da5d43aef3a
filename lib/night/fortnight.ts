import { skyFrameAt } from '../sky/frame-at';
import { sunAltitudeAtDeg, sunAltitudeDeg } from '../sky/twilight';
import { eveningOf, type Evening, type NightSite, type NoEvening } from './evening';
import type { Pause } from './plan-night';

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
export async function fortnightFrom(
  site: NightSite,
  { localDate, endsAt }: { localDate: string; endsAt: string },
  pause: Pause,
): Promise<Fortnight> {
  const evenings: FortnightEvening[] = [];
  for (let day = 0; day < nights; day += 1) {
    await pause();
    evenings.push(eveningBySunAndMoon(site, dayAfter(localDate, day), endsAt));
  }
  const [best] = [...evenings].sort(darkestFirst);
  if (best !== undefined && best.darkMinutes > 0) {
    return { evenings, best: best.localDate, nextDark: null };
  }
  return { evenings, best: null, nextDark: await nextDarkAfter(site, localDate, endsAt, pause) };
}

/** Looked for week by week, then day by day: darkness comes and goes with the season. */
async function nextDarkAfter(
  site: NightSite,
  localDate: string,
  endsAt: string,
  pause: Pause,
): Promise<string | null> {
  const isDark = async (day: number): Promise<boolean> => {
    await pause();
    const read = eveningOf(site, { localDate: dayAfter(localDate, day), endsAt });
    return read.ok && minutesOf(darkSpan(site, read.evening)) > 0;
  };
  for (let week = nights; week <= 366; week += 7) {
    if (!(await isDark(week))) continue;
    let day = week;
    while (day > nights && (await isDark(day - 1))) day -= 1;
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
  const dark = darkSpan(site, read.evening);
  const darkMinutes = minutesOf(dark);
  const moonlit = moon.up.reduce((sum, up) => sum + minutesOf(overlap(dark, up)), 0);
  return {
    localDate,
    sunset: times.sunset,
    darkFrom: times.nauticalDusk,
    noSunset: times.sunset === null ? 'sun-stays-down' : null,
    darkMinutes: Math.round(darkMinutes),
    moonlessMinutes: Math.round(darkMinutes - moonlit),
    illuminatedFraction: moon.illuminatedFraction,
  };
}

type Span = { from: string; to: string };

const minutesOf = (span: Span | null): number =>
  span === null ? 0 : (Date.parse(span.to) - Date.parse(span.from)) / 60_000;

/** Instants are all written alike, so that the later one is the greater text. */
function overlap(one: Span | null, other: Span): Span | null {
  if (one === null) return null;
  const from = one.from > other.from ? one.from : other.from;
  const to = one.to < other.to ? one.to : other.to;
  return from < to ? { from, to } : null;
}

/** The part of an evening with the Sun 12° down or more; null where there is none. */
function darkSpan({ place }: NightSite, { from, to, times }: Evening): Span | null {
  const { nauticalDusk, nauticalDawn } = times;
  if (nauticalDusk === null && nauticalDawn === null) {
    // The Sun crosses that height not once from noon to noon: it is above it throughout, or below.
    const isDark = sunAltitudeDeg(place, new Date(from)) <= sunAltitudeAtDeg.nautical;
    return isDark ? { from, to } : null;
  }
  return overlap({ from: nauticalDusk ?? from, to: nauticalDawn ?? to }, { from, to });
}
