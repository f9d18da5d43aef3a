import { showsWhole, splits } from '../optics/shows';
import { skyTargets, type SkyTarget } from '../optics/sky-targets';
import type { Eyepiece } from '../pointing/scenario';
import type { CatalogueStar, StarCatalogue } from '../sky/catalogue';
import { horizonAltitudeDeg } from '../sky/horizon';
import { placeCatalogue } from '../sky/star-places';
import { sunAltitudeAtDeg } from '../sky/twilight';
import type { NightSite } from './evening';
import type { NightMoment } from './night-pairs';

/** A telescope with all its eyepieces. */
export type ShowingKit = {
  name: string;
  telescope: { focalLengthMm: number; apertureMm: number };
  eyepieces: readonly Eyepiece[];
};

/** Something to look at once the telescopes are aligned. Instants UTC, ISO 8601. */
export type WorthShowing = {
  name: string;
  kind: 'moon' | 'planet' | 'cluster' | 'double';
  from: string;
  until: string;
  /** Where it stands highest in the evening, short of where the mount would have to race round. */
  best: { instant: string; azimuthDeg: number; altitudeDeg: number };
  /** Telescope and eyepiece that show it: whole, or as two; empty for Moon and planets, which all show. */
  with: readonly { kit: string; focalLengthMm: number }[];
};

/** Lower than that the air spoils the picture; common practice, no source. */
const lowestDeg = 20;
/** Above the site's own skyline. */
const clearOfSkylineDeg = 2;

type Standing = { azimuthDeg: number; altitudeDeg: number };
type Candidate = Pick<WorthShowing, 'name' | 'kind' | 'with'> & {
  at: (moment: NightMoment) => Standing;
};

/** What stands well once two stars serve, the brightest kinds first; clusters from nautical dusk on. */
export const worthShowing = (
  site: NightSite,
  kits: readonly ShowingKit[],
  dark: readonly NightMoment[],
): WorthShowing[] => {
  const fixed = fixedTargets(kits);
  const clusters = fixed.filter(({ kind }) => kind === 'cluster');
  const doubles = fixed.filter(({ kind }) => kind === 'double');
  // A cluster is drowned by the twilight in which its bright neighbours already serve to align on.
  const nightfall = dark.filter(
    ({ frame }) => frame.sun.trueAltitudeDeg <= sunAltitudeAtDeg.nautical,
  );
  return [
    ...standingWell(site, wanderers(), dark),
    ...standingWell(site, clusters, nightfall),
    ...standingWell(site, doubles, dark),
  ];
};

/** Moon and planets, which the eye finds in twilight too, on an evening that has no two stars. */
export const worthShowingByEye = (
  site: NightSite,
  moments: readonly NightMoment[],
): WorthShowing[] => standingWell(site, wanderers(), moments);

function standingWell(
  site: NightSite,
  candidates: readonly Candidate[],
  moments: readonly NightMoment[],
): WorthShowing[] {
  return candidates.flatMap((candidate) => {
    const stands = moments
      .map((moment) => ({ instant: moment.instant, ...candidate.at(moment) }))
      .filter((one) => isClear(site, one));
    const [first] = stands;
    const last = stands.at(-1);
    if (first === undefined || last === undefined) return [];
    const best = bestOf(stands, site);
    const { name, kind, with: kitsWith } = candidate;
    return [{ name, kind, best, with: kitsWith, from: first.instant, until: last.instant }];
  });
}

/**
 * The highest, but no higher than an alignment star may stand where there is a choice: overhead a mount in
 * altitude and azimuth has to turn fast and far to follow, and the eyepiece is awkward to reach.
 */
function bestOf<One extends Standing>(stands: readonly One[], { settings }: NightSite): One {
  const higher = (a: One, b: One): One => (b.altitudeDeg > a.altitudeDeg ? b : a);
  const lower = (a: One, b: One): One => (b.altitudeDeg < a.altitudeDeg ? b : a);
  const within = stands.filter(({ altitudeDeg }) => altitudeDeg <= settings.highestAltitudeDeg);
  return within.length > 0 ? within.reduce(higher) : stands.reduce(lower);
}

const isClear = ({ horizon }: NightSite, { azimuthDeg, altitudeDeg }: Standing): boolean =>
  altitudeDeg >= Math.max(lowestDeg, horizonAltitudeDeg(horizon, azimuthDeg) + clearOfSkylineDeg);

function wanderers(): Candidate[] {
  const shown = ['venus', 'mars', 'jupiter', 'saturn'] as const;
  return [
    { name: 'the Moon', kind: 'moon', with: [], at: ({ frame }) => frame.moon },
    ...shown.map((body): Candidate => ({
      name: `${body.charAt(0).toUpperCase()}${body.slice(1)}`,
      kind: 'planet',
      with: [],
      at: ({ frame }) => {
        const planet = frame.planets.find((one) => one.body === body);
        if (planet === undefined) throw new Error(`the sky has no ${body}`);
        return planet;
      },
    })),
  ];
}

/** Clusters that some eyepiece shows whole, doubles that some eyepiece parts. */
function fixedTargets(kits: readonly ShowingKit[]): Candidate[] {
  return skyTargets.flatMap((target): Candidate[] => {
    const shownWith = kits.flatMap(({ name, telescope, eyepieces }) => {
      const eyepiece = eyepieces.find((one) => shows(target, telescope, one));
      return eyepiece === undefined ? [] : [{ kit: name, focalLengthMm: eyepiece.focalLengthMm }];
    });
    if (shownWith.length === 0) return [];
    const single = catalogueOf(target);
    const at = ({ frame }: NightMoment): Standing => {
      const { azimuthDeg, altitudeDeg } = placeCatalogue(single, frame);
      return { azimuthDeg: azimuthDeg[0] ?? 0, altitudeDeg: altitudeDeg[0] ?? -90 };
    };
    return [{ name: target.name, kind: target.kind, with: shownWith, at }];
  });
}

const shows = (
  target: SkyTarget,
  telescope: ShowingKit['telescope'],
  eyepiece: Eyepiece,
): boolean =>
  target.kind === 'cluster'
    ? showsWhole(telescope, eyepiece, target.sizeArcmin)
    : splits(telescope, eyepiece, target.separationArcsec);

/** A catalogue of the one target, so that it is placed as every star is. */
function catalogueOf({ name, rightAscensionDeg, declinationDeg }: SkyTarget): StarCatalogue {
  const star: CatalogueStar = {
    hip: 0,
    hr: null,
    raDeg: rightAscensionDeg,
    decDeg: declinationDeg,
    pmRaMasYr: 0,
    pmDecMasYr: 0,
    magnitude: 5,
    colourIndex: null,
    name,
    bayer: '',
    constellation: '',
    largeAmplitudeVariable: false,
  };
  return { version: name, stars: [star], figures: [] };
}
