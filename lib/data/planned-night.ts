import 'server-only';
import { z } from 'zod';
import { loadCatalogue } from '../content/sky-catalogue';
import type { NightSite, NoEvening } from '../night/evening';
import { planNight, type NightPlan } from '../night/plan-night';
import { localTimeOfInstant } from '../sky/local-time';
import type { Clock } from './clock';
import {
  nightKits,
  nightStands,
  townChoices,
  type NightSiteChoice,
  type NightStand,
} from './night-sites';
import { givesWay } from './in-turns';
import { keepLast } from './keep-last';
import { failure, success, type Result } from './result';

/** What was asked for and where it stands, for the form above a plan. */
export type PlannedEvening = {
  sites: readonly NightSiteChoice[];
  siteId: string;
  /** Other towns by the name that was asked for. */
  otherTowns: readonly NightSiteChoice[];
  placeName: string;
  timeZone: string;
  localDate: string;
  endsAt: string;
};

export type PlanOrNone = { ok: true; plan: NightPlan } | { ok: false; reason: NoEvening };

type PlannedNight = {
  asked: PlannedEvening;
  stand: NightStand;
  site: NightSite;
  /** Reckoned on request, so that what was asked for can be said before. */
  plan: () => Promise<PlanOrNone>;
};

const requestSchema = z.object({
  site: z.string().max(60).optional(),
  town: z.string().trim().max(100, 'Write the name of a town, such as Quito.').optional(),
  date: z.iso.date('Write the date as year-month-day, such as 2026-12-05.').optional(),
  ends: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as hours and minutes, such as 22:30.')
    .optional(),
});

/** Of place, skyline, telescopes and date alone: nothing of any class or person. */
const lastPlans = keepLast<PlanOrNone>(24);

/** When school nights end unless a teacher says otherwise; our judgement. */
const usualEnd = '22:30';

/** One evening of a class, planned; asked for by those who have made sure that the viewer may see it. */
export async function planEvening(
  classId: string,
  request: unknown,
  clock: Clock,
): Promise<Result<PlannedNight>> {
  const parsed = requestSchema.safeParse(request);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failure(
      'bad-input',
      issue?.message ?? 'This plan cannot be read.',
      String(issue?.path[0]),
    );
  }
  const { town = '' } = parsed.data;
  const towns = town === '' ? [] : await townChoices(town);
  if (town !== '' && towns.length === 0) {
    return failure(
      'bad-input',
      'No town in the list begins like this. Check the spelling, or write another town nearby.',
      'town',
    );
  }
  const [found, ...otherTowns] = towns;
  const { stands, chosen } = await nightStands(classId, found?.id ?? parsed.data.site);
  const { place, horizon, timeZone, sky, settings } = chosen.scenario;
  const site = { place, horizon, timeZone, sky, settings };
  const today = localTimeOfInstant(clock.now().toISOString(), timeZone).slice(0, 10);
  const evening = {
    localDate: parsed.data.date ?? today,
    endsAt: parsed.data.ends ?? usualEnd,
  };
  const kits = nightKits(chosen.scenario);
  return success({
    asked: {
      sites: stands.map(({ id, label }) => ({ id, label })),
      siteId: chosen.id,
      otherTowns,
      placeName: chosen.placeName,
      timeZone,
      ...evening,
    },
    stand: chosen,
    site,
    plan: () =>
      lastPlans({ site, kits, ...evening }, () =>
        planNight({ site, kits, catalogue: loadCatalogue(), ...evening, pause: givesWay() }),
      ),
  });
}
