import type { StarCatalogue } from '../sky/catalogue';
import {
  clockTime,
  eveningOf,
  momentsOf,
  type Evening,
  type NightSite,
  type NoEvening,
} from './evening';
import {
  momentAt,
  pairsAt,
  type NightKit,
  type NightMoment,
  type PlannedPair,
} from './night-pairs';
import { worthShowing, type ShowingKit, type WorthShowing } from './worth-showing';

export type PlanKit = NightKit & ShowingKit;

export type PlannedHour = {
  instant: string;
  pairs: readonly { kitId: string; kitName: string; pairs: readonly PlannedPair[] }[];
};

export type NightPlan = {
  evening: Evening;
  /** The first star that may serve, and from when two do; null where none does. */
  firstStar: { instant: string; name: string; azimuthDeg: number; altitudeDeg: number } | null;
  twoStarsFrom: string | null;
  hours: readonly PlannedHour[];
  toShow: readonly WorthShowing[];
};

/** How finely an evening is looked through; windows are as fine as that. */
export const planStepMinutes = 10;

/**
 * A class's evening: when one can begin, on which pairs each telescope is aligned hour by hour, and what is
 * worth showing afterwards. Knows nothing of weather.
 */
export function planNight({
  site,
  kits,
  catalogue,
  localDate,
  endsAt,
}: {
  site: NightSite;
  kits: readonly PlanKit[];
  catalogue: StarCatalogue;
  localDate: string;
  endsAt: string;
}): { ok: true; plan: NightPlan } | { ok: false; reason: NoEvening } {
  const read = eveningOf(site, { localDate, endsAt });
  if (!read.ok) return read;
  const { evening } = read;
  const moments = momentsOf(evening, {
    stepMinutes: planStepMinutes,
    timeZone: site.timeZone,
  }).map((instant) => momentAt(site, catalogue, instant));
  const start = moments.find(({ usable }) => usable.length >= 2);
  return {
    ok: true,
    plan: {
      evening,
      firstStar: firstStarOf(moments),
      twoStarsFrom: start?.instant ?? null,
      hours: hoursOf(moments, start, site.timeZone).map((moment) => ({
        instant: moment.instant,
        pairs: kits.map((kit) => ({
          ...{ kitId: kit.id, kitName: kit.name },
          pairs: pairsAt(kit, moment, moments),
        })),
      })),
      toShow: worthShowing(site, kits, darkPart(moments, start)),
    },
  };
}

function firstStarOf(moments: readonly NightMoment[]): NightPlan['firstStar'] {
  const first = moments.find(({ usable }) => usable.length > 0);
  if (first === undefined) return null;
  const [brightest] = [...first.usable].sort((a, b) => a.magnitude - b.magnitude);
  if (brightest === undefined) return null;
  const { name, azimuthDeg, altitudeDeg } = brightest;
  return { instant: first.instant, ...{ name, azimuthDeg, altitudeDeg } };
}

/** When two stars serve, and every whole hour of the wall clock after it. */
function hoursOf(
  moments: readonly NightMoment[],
  start: NightMoment | undefined,
  timeZone: string,
): NightMoment[] {
  if (start === undefined) return [];
  return moments.filter(
    (moment) =>
      moment === start ||
      (moment.instant > start.instant && clockTime(moment.instant, timeZone).endsWith(':00')),
  );
}

const darkPart = (
  moments: readonly NightMoment[],
  start: NightMoment | undefined,
): NightMoment[] =>
  start === undefined ? [] : moments.filter(({ instant }) => instant >= start.instant);
