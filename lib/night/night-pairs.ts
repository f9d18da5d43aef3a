import type { AnswerKeyPair, AnswerKeyStar } from '../pointing/answer-key';
import { cautionsFor, lookAlikeFainterBy, lookAlikesOf } from '../pointing/cautions';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { rankPairs } from '../pointing/rank-pairs';
import type { Eyepiece, Telescope } from '../pointing/scenario';
import { seenSky } from '../pointing/seen-sky';
import { unusableReasons } from '../pointing/usable-stars';
import type { StarCatalogue } from '../sky/catalogue';
import { airmass, seenAsMagnitude } from '../sky/extinction';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import type { NightSite } from './evening';

export type NightKit = { id: string; name: string; telescope: Telescope; eyepiece: Eyepiece };

/** A star that may serve; `seenAs`: the V of one that would look as bright at the zenith. */
export type NightStar = Pick<
  AnswerKeyStar,
  'hip' | 'name' | 'azimuthDeg' | 'altitudeDeg' | 'magnitude' | 'cautions'
> & { seenAs: number };

/** The sky at one moment of the evening, with the stars that may serve. */
export type NightMoment = { instant: string; frame: SkyFrame; usable: readonly NightStar[] };

type PlannedStar = { hip: number; name: string; azimuthDeg: number; altitudeDeg: number };
/** Two stars to align on. They may serve from and until those instants, seen every few minutes. */
export type PlannedPair = {
  stars: readonly [PlannedStar, PlannedStar];
  /** Share of targets in the observing eyepiece, 0–1. */
  hitRate: number;
  from: string;
  until: string;
  /** A neighbour that could be taken for one of them. */
  lookAlikes: readonly string[];
};

/** Nothing fainter may serve by any teacher's limits that are usual; it keeps the scan short. */
const faintestListed = 3;

export function momentAt(site: NightSite, catalogue: StarCatalogue, instant: string): NightMoment {
  const frame = skyFrameAt({ instant, place: site.place });
  const scenario = { ...site, clouds: [] };
  const { extinction } = site.sky;
  // A look-alike looks brighter than the faintest star at its lowest, or a little less bright: what is
  // fainter than that overhead is so everywhere, and the thousands of such stars need no look.
  const lowestAirmass = airmass(site.settings.lowestAltitudeDeg);
  const faintestLookAlike = faintestListed + lookAlikeFainterBy + extinction * (lowestAirmass - 1);
  const sky = seenSky({
    scenario,
    frame,
    catalogue,
    keep: ({ magnitude }) => magnitude <= faintestLookAlike,
  });
  const lookAlikes = lookAlikesOf(sky, scenario);
  const usable = sky.stars
    .filter(
      (star) =>
        star.magnitude <= faintestListed && unusableReasons(star, scenario, sky).length === 0,
    )
    .map((star): NightStar => ({
      hip: star.hip,
      name: star.name,
      azimuthDeg: star.azimuthDeg,
      altitudeDeg: star.altitudeDeg,
      magnitude: star.magnitude,
      cautions: cautionsFor(star, lookAlikes),
      seenAs: seenAsMagnitude(star.magnitude, extinction, star.altitudeDeg),
    }));
  return { instant, frame, usable };
}

/** A pair without a fault is taken before one that is worth no more than this much better. */
const worthTheRisk = 0.05;
/** Pairs this close in worth are worth the same, as in the marks of the labs. */
const worthTheSame = 0.02;
/** A class needs as long as this to find and centre two stars; our judgement. */
export const alignMinutes = 20;

/**
 * The pair to align on at a moment, and one that shares no star with it for when cloud comes; fewer where
 * the sky has none. `moments` is the whole evening, for how long they serve.
 */
export function pairsAt(
  kit: NightKit,
  moment: NightMoment,
  moments: readonly NightMoment[],
): PlannedPair[] {
  const ranked = rankPairs(
    moment.usable,
    kit.telescope,
    fieldRadiusArcmin(kit.telescope, kit.eyepiece),
  ).filter(({ expectedErrorArcmin }) => expectedErrorArcmin !== null);
  const staying = stayingFrom(moment, moments);
  const first = easiest(ranked, moment, staying);
  if (first === undefined) return [];
  const second = easiest(
    ranked.filter(({ stars }) => stars.every((hip) => !first.stars.includes(hip))),
    moment,
    staying,
  );
  return [first, ...(second === undefined ? [] : [second])].map((pair) =>
    planned(pair, moment, moments),
  );
}

/** HIP numbers of the stars that serve for as long as aligning takes, or until packing up. */
function stayingFrom(moment: NightMoment, moments: readonly NightMoment[]): ReadonlySet<number> {
  const end = Date.parse(moment.instant) + alignMinutes * 60_000;
  const meanwhile = moments.filter(
    ({ instant }) => instant > moment.instant && Date.parse(instant) <= end,
  );
  return new Set(
    moment.usable
      .map(({ hip }) => hip)
      .filter((hip) => meanwhile.every(({ usable }) => usable.some((star) => star.hip === hip))),
  );
}

/**
 * The best pair, unless one is nearly as good that serves long enough and without a look-alike, or does at
 * least the one or the other. Of those as good as the one so found, the pair whose fainter star looks
 * brightest: beginners find Vega sooner than Kochab.
 */
function easiest(
  ranked: readonly AnswerKeyPair[],
  moment: NightMoment,
  staying: ReadonlySet<number>,
): AnswerKeyPair | undefined {
  const [best] = ranked;
  if (best === undefined) return undefined;
  const stays = ({ stars }: AnswerKeyPair) => stars.every((hip) => staying.has(hip));
  const clear = ({ stars }: AnswerKeyPair) => isClear(stars, moment);
  const wishes = [(pair: AnswerKeyPair) => stays(pair) && clear(pair), stays, clear];
  for (const fits of [...wishes, () => true]) {
    const fitting = ranked.filter(fits);
    const [top] = fitting;
    if (top === undefined || best.hitRate - top.hitRate > worthTheRisk) continue;
    return fitting
      .filter(({ hitRate }) => top.hitRate - hitRate <= worthTheSame)
      .reduce((found, one) => (fainterOf(one, moment) < fainterOf(found, moment) ? one : found));
  }
  return best;
}

const isClear = (stars: AnswerKeyPair['stars'], moment: NightMoment): boolean =>
  stars.every((hip) => starOf(moment, hip).cautions.length === 0);

const fainterOf = ({ stars }: AnswerKeyPair, moment: NightMoment): number =>
  Math.max(...stars.map((hip) => starOf(moment, hip).seenAs));

function starOf({ usable }: NightMoment, hip: number): NightStar {
  const star = usable.find((one) => one.hip === hip);
  if (star === undefined) throw new Error(`HIP ${String(hip)} is in a pair but not in the sky`);
  return star;
}

function planned(
  { stars, hitRate }: AnswerKeyPair,
  moment: NightMoment,
  moments: readonly NightMoment[],
): PlannedPair {
  const [one, other] = [starOf(moment, stars[0]), starOf(moment, stars[1])];
  const serve = (at: NightMoment): boolean =>
    stars.every((hip) => at.usable.some((star) => star.hip === hip));
  const now = moments.findIndex(({ instant }) => instant === moment.instant);
  let [first, last] = [now, now];
  while (first > 0 && serve(moments[first - 1] ?? moment)) first -= 1;
  while (last < moments.length - 1 && serve(moments[last + 1] ?? moment)) last += 1;
  return {
    stars: [placeOf(one), placeOf(other)],
    hitRate,
    from: (moments[first] ?? moment).instant,
    until: (moments[last] ?? moment).instant,
    lookAlikes: [one, other].flatMap((star) =>
      star.cautions.map(({ neighbourName }) => `${neighbourName} for ${star.name}`),
    ),
  };
}

const placeOf = ({ hip, name, azimuthDeg, altitudeDeg }: NightStar): PlannedStar => ({
  hip,
  name,
  azimuthDeg,
  altitudeDeg,
});
