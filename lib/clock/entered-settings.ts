import type { GeographicPlace } from '../sky/astronomy';
import { skyFrameAt } from '../sky/frame-at';
import { localTimeOfInstant } from '../sky/local-time';
import type { SkyFrame } from '../sky/sky-frame';
import { zoneOffsetAt } from '../sky/zone-offset';
import { believedInstant, type BelievedInstant, type EnteredTime } from './believed-instant';

/** What was told to the mount's computer. It takes every word of it. */
export type EnteredSettings = EnteredTime & {
  latitudeDeg: number;
  /** East is positive. */
  longitudeDeg: number;
};

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
