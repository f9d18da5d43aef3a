import type { Scenario } from '../pointing/scenario';
import { instantOfLocalTime, localTimeOfInstant } from '../sky/local-time';
import { moonRiseAndSet, type MoonPassage } from '../sky/moon-rise-set';
import { skyFrameAt } from '../sky/frame-at';
import { duskAndDawn, sunAltitudeAtDeg, sunAltitudeDeg, type NightTimes } from '../sky/twilight';

/** Place, clock and skyline of a class's nights; the telescopes come beside it. */
export type NightSite = Omit<Scenario, 'telescope' | 'eyepiece' | 'localTime' | 'clouds'>;

/** A class's evening: from sunset until packing up. Instants UTC, ISO 8601. */
export type Evening = {
  localDate: string;
  times: NightTimes;
  /** Sunset, or noon where the Sun stays down. */
  from: string;
  /** When packing up begins. */
  to: string;
  moon: {
    /** 0–1, in the middle of the evening. */
    illuminatedFraction: number;
    /** Through the evening and the night after it. */
    passages: readonly MoonPassage[];
    /** The parts of the evening with the Moon above the level horizon; no passage is needed for one. */
    up: readonly Span[];
  };
};

type Span = { from: string; to: string };

export type NoEvening =
  /** The Sun does not set, or packing up comes before sunset. */
  'sun-stays-up' | 'ends-before-sunset' | 'no-such-time';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;

/**
 * The evening that begins on a local date ("2026-12-05") and ends by the wall clock ("22:30"); an end
 * before noon means the morning after.
 */
export function eveningOf(
  site: NightSite,
  { localDate, endsAt }: { localDate: string; endsAt: string },
): { ok: true; evening: Evening } | { ok: false; reason: NoEvening } {
  const { place, timeZone } = site;
  const noon = instantOfLocalTime(`${localDate}T12:00`, timeZone);
  const end = instantOfLocalTime(`${dateOfEnd(localDate, endsAt)}T${endsAt}`, timeZone);
  if (!noon.ok || !end.ok) return { ok: false, reason: 'no-such-time' };
  const times = duskAndDawn({ place, localDate, timeZone });
  const staysDown = times.sunset === null && isDown(site, new Date(noon.instant));
  if (times.sunset === null && !staysDown) return { ok: false, reason: 'sun-stays-up' };
  const from = times.sunset ?? noon.instant;
  const to = times.sunrise !== null && times.sunrise < end.instant ? times.sunrise : end.instant;
  if (to <= from) return { ok: false, reason: 'ends-before-sunset' };
  const middle = new Date((Date.parse(from) + Date.parse(to)) / 2);
  const { moon } = skyFrameAt({ instant: middle, place });
  const passages = moonRiseAndSet({
    place,
    from: new Date(noon.instant),
    to: new Date(Date.parse(noon.instant) + 24 * hourMs),
  });
  return {
    ok: true,
    evening: {
      localDate,
      times,
      from,
      to,
      moon: {
        illuminatedFraction: moon.illuminatedFraction,
        passages,
        up: spansUp({ from, to }, passages, moon.trueAltitudeDeg > moonRiseAndSetDeg),
      },
    },
  };
}

/** The Moon's centre when its upper limb is on the horizon: 34′ of refraction and its half-width of 15.5′. */
const moonRiseAndSetDeg = -49.5 / 60;

/** High latitudes have nights without a passage: then the Moon's own altitude says which kind they are. */
function spansUp(
  { from, to }: Span,
  passages: readonly MoonPassage[],
  isUpInTheMiddle: boolean,
): Span[] {
  const within = passages.filter(({ instant }) => instant > from && instant < to);
  if (within.length === 0) return isUpInTheMiddle ? [{ from, to }] : [];
  const edges = [
    ...(within[0]?.kind === 'set' ? [from] : []),
    ...within.map(({ instant }) => instant),
    ...(within.at(-1)?.kind === 'rise' ? [to] : []),
  ];
  return edges.flatMap((edge, index) => {
    const end = edges[index + 1];
    return index % 2 === 1 || end === undefined ? [] : [{ from: edge, to: end }];
  });
}

const isDown = ({ place }: NightSite, instant: Date): boolean =>
  sunAltitudeDeg(place, instant) < sunAltitudeAtDeg.riseAndSet;

function dateOfEnd(localDate: string, endsAt: string): string {
  if (endsAt >= '12:00') return localDate;
  const next = new Date(Date.parse(`${localDate}T12:00:00Z`) + 24 * hourMs);
  return next.toISOString().slice(0, 10);
}

/** Instants of the evening every so many minutes, on whole such minutes of the wall clock's hour. */
export function momentsOf(
  { from, to }: Pick<Evening, 'from' | 'to'>,
  { stepMinutes, timeZone }: { stepMinutes: number; timeZone: string },
): string[] {
  const step = stepMinutes * minuteMs;
  const minute = Math.ceil(Date.parse(from) / minuteMs) * minuteMs;
  // Zones lie 30 or 45 minutes beside UTC too: the clock on the wall decides.
  const shown = Number(localTimeOfInstant(new Date(minute).toISOString(), timeZone).slice(14, 16));
  const first = minute + ((stepMinutes - (shown % stepMinutes)) % stepMinutes) * minuteMs;
  const moments: string[] = [];
  for (let ms = first; ms <= Date.parse(to); ms += step) moments.push(new Date(ms).toISOString());
  return moments;
}

/** "2026-12-05T19:30+01:00" → "19:30" */
export const clockTime = (instant: string, timeZone: string): string =>
  localTimeOfInstant(
    new Date(Math.round(Date.parse(instant) / minuteMs) * minuteMs).toISOString(),
    timeZone,
  ).slice(11, 16);
