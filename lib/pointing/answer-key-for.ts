import type { StarCatalogue } from '../sky/catalogue';
import type { SkyFrame } from '../sky/sky-frame';
import type { AnswerKey, AnswerKeyStar } from './answer-key';
import { cautionsFor, lookAlikesOf } from './cautions';
import { fieldRadiusArcmin } from './field-radius';
import { rankPairs } from './rank-pairs';
import type { Scenario } from './scenario';
import { seenSky } from './seen-sky';
import { unusableReasons } from './usable-stars';

/**
 * The answer key of a scenario: every star with what speaks for and against it, and every pair of
 * usable stars, best first. `frame` must be the sky of `instant` (UTC) at the scenario's place.
 */
export function answerKeyFor({
  scenario,
  instant,
  frame,
  catalogue,
  faintestListed = Infinity,
}: {
  scenario: Scenario;
  instant: string;
  frame: SkyFrame;
  catalogue: StarCatalogue;
  /** V of the faintest star that is listed. Pairs do not change as long as it spares usable stars. */
  faintestListed?: number;
}): AnswerKey {
  const sky = seenSky({ scenario, frame, catalogue });
  const lookAlikes = lookAlikesOf(sky, scenario);
  const listed = sky.stars.filter((star) => star.magnitude <= faintestListed);
  const stars = listed.map((star): AnswerKeyStar => {
    const reasons = unusableReasons(star, scenario, sky);
    const { hip, name, azimuthDeg, altitudeDeg, magnitude } = star;
    const cautions = cautionsFor(star, lookAlikes);
    const usable = reasons.length === 0;
    return { hip, name, azimuthDeg, altitudeDeg, magnitude, usable, reasons, cautions };
  });
  return {
    instant,
    nakedEyeLimit: sky.nakedEyeLimit,
    stars,
    pairs: rankPairs(
      stars.filter((star) => star.usable),
      scenario.telescope,
      fieldRadiusArcmin(scenario.telescope, scenario.eyepiece),
    ),
  };
}
