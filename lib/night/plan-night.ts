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
import {
  worthShowing,
  worthShowingByEye,
  type ShowingKit,
  type WorthShowing,
} from './worth-showing';

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
  /** For telescopes whose first pair is poor: when a good one comes. */
  goodLater: readonly LaterPair[];
  toShow: readonly WorthShowing[];
};

/** When a telescope that begins poorly has a good pair, on the plan's steps; null: not in this evening. */
export type LaterPair = { kitId: string; kitName: string; later: CardPair | null };
/** The pair to align on from a moment on, and another for when cloud comes; null where there is none. */
export type CardPair = { instant: string; pair: PlannedPair; spare: PlannedPair | null };

/** Nine targets of ten in the eyepiece: as good as one needs to begin. Our judgement. */
export const goodHitRate = 0.9;

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
  const dark = darkPart(moments, start);
  return {
    ok: true,
    plan: {
      evening,
      firstStar: firstStarOf(moments),
      twoStarsFrom: start?.instant ?? null,
      hours: hoursOf(moments, start, site.timeZone).map((moment) => ({
        instant: moment.instant,
        pairs: kits.map((kit) => ({
          kitId: kit.id,
          kitName: kit.name,
          pairs: pairsAt(kit, moment, moments),
        })),
      })),
      goodLater: kits.flatMap((kit) => goodLaterFor(kit, dark, moments)),
      toShow:
        start === undefined ? worthShowingByEye(site, moments) : worthShowing(site, kits, dark),
    },
  };
}

function firstStarOf(moments: readonly NightMoment[]): NightPlan['firstStar'] {
  const first = moments.find(({ usable }) => usable.length > 0);
  if (first === undefined) return null;
  const [brightest] = [...first.usable].sort((a, b) => a.magnitude - b.magnitude);
  if (brightest === undefined) return null;
  const { name, azimuthDeg, altitudeDeg } = brightest;
  return { instant: first.instant, name, azimuthDeg, altitudeDeg };
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

function goodLaterFor(
  kit: PlanKit,
  dark: readonly NightMoment[],
  moments: readonly NightMoment[],
): LaterPair[] {
  const { id: kitId, name: kitName } = kit;
  for (const [index, moment] of dark.entries()) {
    const [pair, spare = null] = pairsAt(kit, moment, moments);
    if (pair === undefined || pair.hitRate < goodHitRate) continue;
    // Good from the start: there is nothing to wait for.
    return index === 0 ? [] : [{ kitId, kitName, later: { instant: moment.instant, pair, spare } }];
  }
  return dark.length === 0 ? [] : [{ kitId, kitName, later: null }];
}

const darkPart = (
  moments: readonly NightMoment[],
  start: NightMoment | undefined,
): NightMoment[] =>
  start === undefined ? [] : moments.filter(({ instant }) => instant >= start.instant);
