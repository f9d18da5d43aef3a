import type { StarCatalogue } from '../sky/catalogue';
import { seenAsMagnitude } from '../sky/extinction';
import { skyFrameAt } from '../sky/frame-at';
import { localTimeOfInstant } from '../sky/local-time';
import type { SkyFrame } from '../sky/sky-frame';
import type { AnswerKeyPair, UnusableReason } from '../pointing/answer-key';
import { cautionsFor, isClearCaution, lookAlikesOf } from '../pointing/cautions';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { rankPairs } from '../pointing/rank-pairs';
import type { CloudPatch, Scenario } from '../pointing/scenario';
import { seenSky, type SeenSky, type SeenStar } from '../pointing/seen-sky';
import { deadBand, unusableReasons } from '../pointing/usable-stars';

/** A star as the generator weighs it up. */
export type WeighedStar = SeenStar & {
  reasons: readonly UnusableReason[];
  usable: boolean;
  /** Usable with the benefit of the dead band. */
  usableAtLimit: boolean;
  /** Whether something nearby could be taken for it. */
  hasCaution: boolean;
  /** Whether the eye can see it: bright enough, no cloud, house or hill before it. */
  inView: boolean;
};

/** One possible evening of a variant: its sky, and what the engine says of every bright star. */
export type Night = {
  scenario: Scenario;
  frame: SkyFrame;
  nakedEyeLimit: number;
  /** Stars that are up and bright enough to be looked at twice. */
  stars: readonly WeighedStar[];
  usable: readonly WeighedStar[];
  /** In view, named and bright: what a learner would consider, usable or not. */
  tempting: readonly WeighedStar[];
  /** Pairs of usable stars that determine the fit, best first. */
  pairs: readonly AnswerKeyPair[];
};

/** Fainter than the faintest alignment star by this much, a star is no temptation any more. */
const fainterStillTempting = 1;
/** Neighbours lower in the sky than a star look fainter than their V: reach this much farther. */
const reachForLookAlikes = 2;

/** The scenario moved to another instant (UTC), on its own wall clock. */
export function nightAt(
  base: Scenario,
  instant: string,
  catalogue: StarCatalogue,
): { night: Night; withClouds: (clouds: readonly CloudPatch[]) => Night } {
  const frame = skyFrameAt({ instant, place: base.place });
  const scenario = { ...base, localTime: localTimeOfInstant(instant, base.timeZone) };
  const { faintestMagnitude } = scenario.settings;
  const sky = seenSky({
    scenario,
    frame,
    catalogue,
    keep: (star) => star.magnitude <= faintestMagnitude + fainterStillTempting + reachForLookAlikes,
  });
  const weigh = (clouds: readonly CloudPatch[]) =>
    weighed({ ...scenario, clouds: [...clouds] }, frame, sky);
  return { night: weigh(scenario.clouds), withClouds: weigh };
}

function weighed(scenario: Scenario, frame: SkyFrame, sky: SeenSky): Night {
  const { faintestMagnitude } = scenario.settings;
  const lookAlikes = lookAlikesOf(sky, scenario);
  const stars = sky.stars
    .filter((star) => star.altitudeDeg > 0)
    .filter((star) => star.magnitude <= faintestMagnitude + fainterStillTempting)
    .map((star): WeighedStar => {
      const reasons = unusableReasons(star, scenario, sky);
      const hidden = reasons.some(
        (reason) =>
          reason.code === 'behind-cloud' ||
          (reason.code === 'behind-horizon' && reason.altitudeDeg < reason.horizonAltitudeDeg),
      );
      const seenAs = seenAsMagnitude(star.magnitude, scenario.sky.extinction, star.altitudeDeg);
      return {
        ...star,
        reasons,
        usable: reasons.length === 0,
        usableAtLimit: unusableReasons(star, scenario, sky, deadBand).length === 0,
        hasCaution:
          star.magnitude <= faintestMagnitude + deadBand.magnitudes &&
          cautionsFor(star, lookAlikes).some(isClearCaution),
        inView: !hidden && seenAs <= sky.nakedEyeLimit,
      };
    });
  const usable = stars.filter((star) => star.usable);
  const radius = fieldRadiusArcmin(scenario.telescope, scenario.eyepiece);
  return {
    scenario,
    frame,
    nakedEyeLimit: sky.nakedEyeLimit,
    stars,
    usable,
    tempting: stars.filter(
      (star) => star.inView && star.named && star.magnitude <= faintestMagnitude,
    ),
    pairs: rankPairs(usable, scenario.telescope, radius).filter(
      (pair) => pair.expectedErrorArcmin !== null,
    ),
  };
}
