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
  alignMinutes,
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

/**
 * When a telescope that begins poorly has a good pair that stays for as long as aligning takes, on the
 * plan's steps; null: not in this evening.
 */
export type LaterPair = { kitId: string; kitName: string; later: CardPair | null };
/** The pair to align on from a moment on, and another for when cloud comes; null where there is none. */
export type CardPair = { instant: string; pair: PlannedPair; spare: PlannedPair | null };

/** Nine targets of ten in the eyepiece: as good as one needs to begin. Our judgement. */
export const goodHitRate = 0.9;

/** How finely an evening is looked through; windows are as fine as that. */
export const planStepMinutes = 10;

/** Lets others have their turn; asked for every few milliseconds of reckoning. */
export type Pause = () => Promise<unknown>;

/**
 * A class's evening: when one can begin, on which pairs each telescope is aligned hour by hour, and what is
 * worth showing afterwards. Knows nothing of weather.
 */
export async function planNight({
  site,
  kits,
  catalogue,
  localDate,
  endsAt,
  pause,
}: {
  site: NightSite;
  kits: readonly PlanKit[];
  catalogue: StarCatalogue;
  localDate: string;
  endsAt: string;
  pause: Pause;
}): Promise<{ ok: true; plan: NightPlan } | { ok: false; reason: NoEvening }> {
  const read = eveningOf(site, { localDate, endsAt });
  if (!read.ok) return read;
  const { evening } = read;
  const { timeZone } = site;
  const moments: NightMoment[] = [];
  for (const instant of momentsOf(evening, { stepMinutes: planStepMinutes, timeZone })) {
    await pause();
    moments.push(momentAt(site, catalogue, instant));
  }
  const start = moments.find(({ usable }) => usable.length >= 2);
  const dark = darkPart(moments, start);
  const hours: PlannedHour[] = [];
  for (const moment of hoursOf(moments, start, timeZone)) {
    const pairs: PlannedHour['pairs'][number][] = [];
    for (const kit of kits) {
      await pause();
      pairs.push({ kitId: kit.id, kitName: kit.name, pairs: pairsAt(kit, moment, moments) });
    }
    hours.push({ instant: moment.instant, pairs });
  }
  const goodLater: LaterPair[] = [];
  for (const kit of kits) goodLater.push(...(await goodLaterFor(kit, dark, moments, pause)));
  await pause();
  return {
    ok: true,
    plan: {
      evening,
      firstStar: firstStarOf(moments),
      twoStarsFrom: start?.instant ?? null,
      hours,
      goodLater,
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

async function goodLaterFor(
  kit: PlanKit,
  dark: readonly NightMoment[],
  moments: readonly NightMoment[],
  pause: Pause,
): Promise<LaterPair[]> {
  const { id: kitId, name: kitName } = kit;
  for (const [index, moment] of dark.entries()) {
    await pause();
    const [pair, spare = null] = pairsAt(kit, moment, moments);
    if (pair === undefined || pair.hitRate < goodHitRate || isTooShort(pair, moment, dark))
      continue;
    // Good from the start: there is nothing to wait for.
    return index === 0 ? [] : [{ kitId, kitName, later: { instant: moment.instant, pair, spare } }];
  }
  return dark.length === 0 ? [] : [{ kitId, kitName, later: null }];
}

/** Gone before a class has aligned on it, while the evening goes on. */
const isTooShort = (
  { until }: PlannedPair,
  { instant }: NightMoment,
  dark: readonly NightMoment[],
): boolean =>
  until !== dark.at(-1)?.instant && Date.parse(until) - Date.parse(instant) < alignMinutes * 60_000;

const darkPart = (
  moments: readonly NightMoment[],
  start: NightMoment | undefined,
): NightMoment[] =>
  start === undefined ? [] : moments.filter(({ instant }) => instant >= start.instant);
