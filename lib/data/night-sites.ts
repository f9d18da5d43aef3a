import 'server-only';
import { loadKits, loadSites } from '../content/sky-catalogue';
import type { PlanKit } from '../night/plan-night';
import { scenarioSchema, type Scenario } from '../pointing/scenario';
import { labOptions, labs } from '../variants/labs';
import { db } from './db';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
  telescopeAndEyepiece,
} from './default-evening';
import { getPlace, searchPlaces, type Place } from './places';

/** Where a class may stand: a place and skyline. */
export type NightSiteChoice = { id: string; label: string };

export type NightStand = NightSiteChoice & { placeName: string; scenario: Scenario };

const ownSite = 'default';

/**
 * Where the class may stand: under the newest version of each of its skies, the newest first, and last
 * at the place that we begin with. A town of the gazetteer that is asked for stands before them, once
 * with each of our skylines.
 */
export async function nightStands(
  classId: string,
  askedId: string | undefined,
): Promise<{ stands: readonly NightStand[]; chosen: NightStand }> {
  const town = await townOf(askedId);
  const own: NightStand = {
    ...standIn(defaultPlace, 'school-yard'),
    id: ownSite,
  };
  const stands = [
    ...(town === null ? [] : loadSites().map(({ id }) => standIn(town, id))),
    ...(await classStands(classId)),
    own,
  ];
  return { stands, chosen: stands.find(({ id }) => id === askedId) ?? stands[0] ?? own };
}

/** Towns of the gazetteer by that name, the first on the skyline that we begin with. */
export async function townChoices(query: string): Promise<NightSiteChoice[]> {
  const towns = await searchPlaces(query, 8);
  return towns.map((town) => ({ id: townId(town.id, 'school-yard'), label: townText(town) }));
}

/** "at-2647632-open-field": a town of the gazetteer with one of our skylines. */
const townId = (placeId: number, siteId: string): string => `at-${String(placeId)}-${siteId}`;

async function townOf(askedId: string | undefined): Promise<Place | null> {
  const id = /^at-(\d{1,12})-/.exec(askedId ?? '')?.[1];
  return id === undefined ? null : getPlace(Number(id));
}

const countryNames = new Intl.DisplayNames(['en'], { type: 'region' });
/** "Springfield, IL, United States"; regions that are mere numbers are left out. */
const townText = ({ name, region, country }: Place): string =>
  [name, /^[A-Z]{2,3}$/.test(region) ? region : '', countryNames.of(country) ?? country]
    .filter((part) => part !== '')
    .join(', ');

function standIn(place: Place, siteId: string): NightStand {
  const site = siteOrSchoolYard(siteId);
  return {
    id: townId(place.id, site.id),
    placeName: place.name,
    label: `${place.name}, ${site.name.toLowerCase()}`,
    scenario: eveningScenario({
      place,
      localTime: '2026-01-01T20:00',
      kit: kitOrFirst(null),
      site,
    }),
  };
}

/** Questions are set without place and time: what stands in for them is nowhere to go to. */
const isWithoutSky = (reference: string): boolean =>
  labs.some((lab) => lab === reference && labOptions[lab].withoutSky === true);

async function classStands(classId: string): Promise<NightStand[]> {
  const scenarios = await db().scenario.findMany({
    where: { classId },
    select: {
      versions: {
        orderBy: { version: 'desc' },
        take: 1,
        select: {
          id: true,
          placeName: true,
          siteId: true,
          content: true,
          createdAt: true,
          parts: { select: { reference: true } },
        },
      },
    },
  });
  const stands = scenarios
    .flatMap((one) => one.versions)
    .filter(({ parts }) => !parts.every(({ reference }) => isWithoutSky(reference)))
    .sort((a, b) => b.createdAt.getTime() - a.createdAt.getTime())
    .map(({ id, placeName, siteId, content }): NightStand => ({
      id,
      placeName,
      scenario: scenarioSchema.parse(content),
      label: `${placeName}, ${siteId === null ? 'a skyline of your own' : siteOrSchoolYard(siteId).name.toLowerCase()}`,
    }));
  // Two assignments under one sky are one place to stand.
  return stands.filter(
    (one, index) => stands.findIndex(({ label }) => label === one.label) === index,
  );
}

/** A telescope of the teacher's own numbers, by the id that its plan has. */
export const ownKitId = 'own';

/** The school's telescopes, and one of the teacher's own numbers where the sky was set for one. */
export function nightKits({ telescope, eyepiece }: Scenario): PlanKit[] {
  const built = loadKits().map((kit): PlanKit => ({
    id: kit.id,
    name: kit.name,
    eyepieces: kit.eyepieces,
    ...telescopeAndEyepiece(kit),
  }));
  if (built.some((kit) => sameOptics(kit.telescope, telescope))) return built;
  return [...built, { id: ownKitId, name: 'Your own', telescope, eyepiece, eyepieces: [eyepiece] }];
}

const sameOptics = (a: Scenario['telescope'], b: Scenario['telescope']): boolean =>
  a.focalLengthMm === b.focalLengthMm && a.apertureMm === b.apertureMm;
