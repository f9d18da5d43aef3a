import 'server-only';
import { z } from 'zod';
import { canSeeClass, type Viewer } from '../auth/policy';
import { loadCatalogue, loadKits } from '../content/sky-catalogue';
import type { NightSite, NoEvening } from '../night/evening';
import { fortnightFrom, type FortnightEvening } from '../night/fortnight';
import { planNight, type NightPlan, type PlanKit } from '../night/plan-night';
import { scenarioSchema, type Scenario } from '../pointing/scenario';
import { localTimeOfInstant } from '../sky/local-time';
import { labOptions, labs } from '../variants/labs';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
  telescopeAndEyepiece,
} from './default-evening';
import { failure, notFound, success, type Result } from './result';

/** Where the class may stand: a place and skyline of one of its assignments, or the one we begin with. */
export type NightSiteChoice = { id: string; label: string };

export type ClassNightPlan = {
  sites: readonly NightSiteChoice[];
  siteId: string;
  placeName: string;
  timeZone: string;
  localDate: string;
  endsAt: string;
  plan: { ok: true; plan: NightPlan } | { ok: false; reason: NoEvening };
  fortnight: { evenings: readonly FortnightEvening[]; best: string | null };
};

const requestSchema = z.object({
  site: z.string().max(60).optional(),
  date: z.iso.date('Write the date as year-month-day, such as 2026-12-05.').optional(),
  ends: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as hours and minutes, such as 22:30.')
    .optional(),
});

/** When school nights end unless a teacher says otherwise; our judgement. */
const usualEnd = '22:30';
const ownSite = 'default';

/** A plan of one evening of the class and the two weeks from it on; nothing of it is kept. */
export async function getNightPlan(
  viewer: Viewer,
  classId: string,
  request: unknown,
  clock: Clock = systemClock,
): Promise<Result<ClassNightPlan>> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return notFound();
  const parsed = requestSchema.safeParse(request);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failure(
      'bad-input',
      issue?.message ?? 'This plan cannot be read.',
      String(issue?.path[0]),
    );
  }
  const stands = await sitesOf(classId);
  const chosen = stands.find(({ id }) => id === parsed.data.site) ?? stands[0];
  if (chosen === undefined) throw new Error('there is always the place that we begin with');
  const site = nightSite(chosen.scenario);
  const { timeZone } = site;
  const today = localTimeOfInstant(clock.now().toISOString(), timeZone).slice(0, 10);
  const evening = {
    localDate: parsed.data.date ?? today,
    endsAt: parsed.data.ends ?? usualEnd,
  };
  return success({
    sites: stands.map(({ id, label }) => ({ id, label })),
    siteId: chosen.id,
    placeName: chosen.placeName,
    timeZone,
    ...evening,
    plan: planNight({
      site,
      kits: kitsFor(chosen.scenario),
      catalogue: loadCatalogue(),
      ...evening,
    }),
    fortnight: fortnightFrom(site, evening),
  });
}

/** Questions are set without place and time: what stands in for them is nowhere to go to. */
const isWithoutSky = (reference: string): boolean =>
  labs.some((lab) => lab === reference && labOptions[lab].withoutSky === true);

type Stand = NightSiteChoice & { placeName: string; scenario: Scenario };

/** The newest version of each of the class's skies, the newest first; last the place that we begin with. */
async function sitesOf(classId: string): Promise<Stand[]> {
  const scenarios = await db().scenario.findMany({
    where: { classId },
    select: {
      versions: {
        orderBy: { version: 'desc' },
        take: 1,
        select: {
          ...{ id: true, placeName: true, siteId: true, content: true, createdAt: true },
          parts: { select: { reference: true } },
        },
      },
    },
  });
  const versions = scenarios
    .flatMap((one) => one.versions)
    .filter(({ parts }) => !parts.every(({ reference }) => isWithoutSky(reference)))
    .sort((a, b) => b.createdAt.getTime() - a.createdAt.getTime());
  const stands = versions.map(({ id, placeName, siteId, content }): Stand => ({
    ...{ id, placeName, scenario: scenarioSchema.parse(content) },
    label: `${placeName}, ${siteId === null ? 'a skyline of your own' : siteOrSchoolYard(siteId).name.toLowerCase()}`,
  }));
  const own: Stand = {
    ...{ id: ownSite, placeName: defaultPlace.name },
    label: `${defaultPlace.name}, ${siteOrSchoolYard(null).name.toLowerCase()}`,
    scenario: eveningScenario({
      ...{ place: defaultPlace, localTime: '2026-01-01T20:00' },
      ...{ kit: kitOrFirst(null), site: siteOrSchoolYard(null) },
    }),
  };
  // Two assignments under one sky are one place to stand.
  const distinct = stands.filter(
    (one, index) => stands.findIndex(({ label }) => label === one.label) === index,
  );
  return [...distinct, own];
}

const nightSite = ({ place, horizon, timeZone, sky, settings }: Scenario): NightSite => ({
  ...{ place, horizon, timeZone, sky, settings },
});

/** The school's telescopes, and a telescope of the teacher's own numbers where the sky was set for one. */
function kitsFor({ telescope, eyepiece }: Scenario): PlanKit[] {
  const built = loadKits().map((kit): PlanKit => ({
    ...{ id: kit.id, name: kit.name, eyepieces: kit.eyepieces },
    ...telescopeAndEyepiece(kit),
  }));
  if (built.some((kit) => sameOptics(kit.telescope, telescope))) return built;
  return [...built, { id: 'own', name: 'Your own', telescope, eyepiece, eyepieces: [eyepiece] }];
}

const sameOptics = (a: Scenario['telescope'], b: Scenario['telescope']): boolean =>
  a.focalLengthMm === b.focalLengthMm && a.apertureMm === b.apertureMm;
