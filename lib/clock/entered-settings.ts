import type { GeographicPlace } from '../sky/astronomy';
import { skyFrameAt } from '../sky/frame-at';
import { localTimeOfInstant } from '../sky/local-time';
import type { SkyFrame } from '../sky/sky-frame';
import { zoneOffsetAt } from '../sky/zone-offset';

/** What was told to the mount's computer. It takes every word of it. */
export type EnteredSettings = {
  /** The wall clock, "2026-12-05T19:30" or with seconds. */
  localTime: string;
  /** Hours ahead of UTC in winter, in minutes: east is positive. */
  zoneOffsetMinutes: number;
  /** Adds to the offset what summer time adds in the zone. */
  summerTime: boolean;
  /** Of the zone, on or off: 60 nearly everywhere. */
  summerTimeMinutes: number;
  latitudeDeg: number;
  /** East is positive. */
  longitudeDeg: number;
};

export type BelievedInstant =
  { ok: true; instant: string } | { ok: false; reason: 'bad-format' | 'no-such-date' };

const wallClock = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2}))?$/;

/** The instant (UTC, ISO 8601) that the computer makes of what was entered. */
export function believedInstant(
  entered: Pick<
    EnteredSettings,
    'localTime' | 'zoneOffsetMinutes' | 'summerTime' | 'summerTimeMinutes'
  >,
): BelievedInstant {
  const match = wallClock.exec(entered.localTime);
  if (match === null) return { ok: false, reason: 'bad-format' };
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = match
    .slice(1)
    .map((part) => Number((part as string | undefined) ?? 0));
  const asUtc = new Date(Date.UTC(year, month - 1, day, hour, minute, second));
  // 30 February rolls over into March: what comes back must be what went in.
  if (!asUtc.toISOString().startsWith(entered.localTime)) {
    return { ok: false, reason: 'no-such-date' };
  }
  const aheadMinutes =
    entered.zoneOffsetMinutes + (entered.summerTime ? entered.summerTimeMinutes : 0);
  return { ok: true, instant: new Date(asUtc.getTime() - aheadMinutes * 60_000).toISOString() };
}

/** The sky that the computer believes to stand over it. */
export function believedSky(
  entered: EnteredSettings,
  elevationM = 0,
): { ok: true; frame: SkyFrame } | Extract<BelievedInstant, { ok: false }> {
  const time = believedInstant(entered);
  if (!time.ok) return time;
  const { latitudeDeg, longitudeDeg } = entered;
  const place = { latitudeDeg, longitudeDeg, elevationM };
  return { ok: true, frame: skyFrameAt({ instant: time.instant, place }) };
}

/** What somebody who makes no mistake enters at an instant (UTC) and place, to the second. */
export function rightSettings(
  instant: string,
  place: Pick<GeographicPlace, 'latitudeDeg' | 'longitudeDeg'>,
  timeZone: string,
): EnteredSettings {
  const zone = zoneOffsetAt(instant, timeZone);
  return {
    // An offset stands behind an hour that comes twice; the summer-time switch tells the two apart.
    localTime: localTimeOfInstant(instant, timeZone).replace(/[+-]\d{2}:\d{2}$/, ''),
    zoneOffsetMinutes: zone.standardMinutes,
    summerTime: zone.summerTime,
    summerTimeMinutes: zone.summerTimeMinutes,
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
  };
}
