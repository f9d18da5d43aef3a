import type { AnswerKeyPair, AnswerKeyStar } from '../pointing/answer-key';
import { answerKeyFor } from '../pointing/answer-key-for';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { rankPairs } from '../pointing/rank-pairs';
import type { Eyepiece, Telescope } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import type { NightSite } from './evening';

export type NightKit = { id: string; name: string; telescope: Telescope; eyepiece: Eyepiece };

/** The sky at one moment of the evening, with the stars that may serve. */
export type NightMoment = { instant: string; frame: SkyFrame; usable: readonly AnswerKeyStar[] };

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
  const key = answerKeyFor({
    scenario: { ...site, clouds: [], localTime: '', ...anyOptics },
    instant,
    frame,
    catalogue,
    faintestListed,
  });
  return { instant, frame, usable: key.stars.filter(({ usable }) => usable) };
}

/** Which stars may serve does not hang on the telescope; what their pairs are worth is asked for each. */
const anyOptics = {
  telescope: {
    focalLengthMm: 500,
    apertureMm: 80,
    computer: 'solved-zero' as const,
    centringArcmin: 5,
    altitudeZeroArcmin: 0,
    coneArcmin: 0,
    axisSkewArcmin: 0,
  },
  eyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
};

/** A pair without a look-alike is taken before one that is worth no more than this much better. */
const worthTheRisk = 0.05;

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
  const first = safest(ranked, moment);
  if (first === undefined) return [];
  const second = safest(
    ranked.filter(({ stars }) => stars.every((hip) => !first.stars.includes(hip))),
    moment,
  );
  return [first, ...(second === undefined ? [] : [second])].map((pair) =>
    planned(pair, moment, moments),
  );
}

function safest(ranked: readonly AnswerKeyPair[], moment: NightMoment): AnswerKeyPair | undefined {
  const [best] = ranked;
  const clear = ranked.find(({ stars }) =>
    stars.every((hip) => starOf(moment, hip).cautions.length === 0),
  );
  return clear !== undefined && best !== undefined && best.hitRate - clear.hitRate <= worthTheRisk
    ? clear
    : best;
}

function starOf({ usable }: NightMoment, hip: number): AnswerKeyStar {
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

const placeOf = ({ hip, name, azimuthDeg, altitudeDeg }: AnswerKeyStar): PlannedStar => ({
  hip,
  name,
  azimuthDeg,
  altitudeDeg,
});
