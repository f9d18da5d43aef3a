import 'server-only';
import { loadKits, loadSites, type Kit, type SiteProfile } from '../content/sky-catalogue';
import { scenarioSchema, type Scenario } from '../pointing/scenario';
import { localTimeOfInstant } from '../sky/local-time';
import { duskAndDawn } from '../sky/twilight';
import type { Place } from './places';

/** Where nothing else is known: a small town under a fair sky. Used until the gazetteer is in. */
export const defaultPlace: Place = {
  id: 0,
  name: 'Keswick',
  country: 'GB',
  region: 'ENG',
  latitudeDeg: 54.599,
  longitudeDeg: -3.132,
  elevationM: 97,
  timeZone: 'Europe/London',
  population: 4984,
};

/** Wall clock at the place, at tonight's nautical dusk, or the darkest there is of it, or 22:00. */
export function tonightAt(
  place: { latitudeDeg: number; longitudeDeg: number; elevationM: number; timeZone: string },
  now: Date,
): string {
  const localDate = localTimeOfInstant(now.toISOString(), place.timeZone).slice(0, 10);
  const night = duskAndDawn({ place, localDate, timeZone: place.timeZone });
  const dusk = night.nauticalDusk ?? night.civilDusk ?? night.sunset;
  if (dusk === null) return `${localDate}T22:00`;
  const wholeMinute = new Date(Math.ceil(Date.parse(dusk) / 60_000) * 60_000);
  return localTimeOfInstant(wholeMinute.toISOString(), place.timeZone);
}

const required = <T extends { id: string }>(items: readonly T[], id: string | null): T => {
  const found = items.find((item) => item.id === id) ?? items[0];
  if (found === undefined) throw new Error('content/ holds no kits or no sites');
  return found;
};

/** The kit of that id, the first one for an unknown id or none. */
export const kitOrFirst = (id: string | null): Kit => required(loadKits(), id);
/** The site of that id; the school yard for an unknown id or none. */
export const siteOrSchoolYard = (id: string | null): SiteProfile => {
  const sites = loadSites();
  return required(sites, sites.some((site) => site.id === id) ? id : 'school-yard');
};

/** The telescope with the eyepiece that its targets are looked at with. */
export function telescopeAndEyepiece(kit: Kit): Pick<Scenario, 'telescope' | 'eyepiece'> {
  const observing = kit.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (observing === undefined) throw new Error(`kit ${kit.id} lacks its observing eyepiece`);
  const { focalLengthMm, apparentFieldDeg } = observing;
  return { telescope: kit.telescope, eyepiece: { focalLengthMm, apparentFieldDeg } };
}

/** A scenario with the built-in kit and site under the sky of that place and time. */
export const eveningScenario = (input: {
  place: Place;
  localTime: string;
  kit: Kit;
  site: SiteProfile;
}): Scenario =>
  scenarioSchema.parse({
    place: {
      latitudeDeg: input.place.latitudeDeg,
      longitudeDeg: input.place.longitudeDeg,
      elevationM: input.place.elevationM,
    },
    horizon: input.site.horizon,
    localTime: input.localTime,
    timeZone: input.place.timeZone,
    ...telescopeAndEyepiece(input.kit),
  });
