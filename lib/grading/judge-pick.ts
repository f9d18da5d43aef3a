import type { AnswerKey, AnswerKeyStar, SkyObjectId } from '../pointing/answer-key';
import { isClearCaution } from '../pointing/cautions';
import { mergedStarOf } from '../pointing/merged-stars';
import { seenSky } from '../pointing/seen-sky';
import { deadBand, unusableReasons } from '../pointing/usable-stars';
import type { StarCatalogue } from '../sky/catalogue';
import type { PairVariant } from '../variants/pair-variant';
import type { PairStarResult } from './pair-result';
import { reasonsWithSlack, type JudgedSky } from './reasons-with-slack';

export type Judging<Variant extends JudgedSky = PairVariant> = {
  variant: Variant;
  answerKey: AnswerKey;
  catalogue: StarCatalogue;
};

/** Whether a star has a look-alike beyond the dead band and none of its look-alikes was named. */
export const cautionMissed = ({ cautions, cautionNamed }: PairStarResult): boolean =>
  !cautionNamed && cautions.some(isClearCaution);

/**
 * The answer key's entry for a picked HIP number: the stored one where there is one, else (for a star
 * too faint to be stored) made afresh from the variant's own frame. A component of a close double
 * stands for the double. Null for what is not in this sky: unknown, or below the horizon.
 */
export function keyStarOf(judging: Judging<JudgedSky>, hip: number): AnswerKeyStar | null {
  const { variant, answerKey, catalogue } = judging;
  const wanted = mergedStarOf(catalogue, hip)?.hip ?? hip;
  const stored = answerKey.stars.find((star) => star.hip === wanted);
  const star = stored ?? freshStar(variant, catalogue, wanted);
  return star === null || star.altitudeDeg < 0 ? null : star;
}

/** Judges one pick with the benefit of the dead band at every limit. */
export function judgePick(
  { variant, catalogue }: Judging<JudgedSky>,
  star: AnswerKeyStar,
  lookAlike: SkyObjectId | null,
): PairStarResult {
  const beyond = new Set(reasonsWithSlack(variant, star, deadBand).map(({ code }) => code));
  const reasons = star.reasons.filter(({ code }) => beyond.has(code));
  const named = lookAlike === null ? null : asMerged(catalogue, lookAlike);
  const cautionNamed = star.cautions.some((caution) => caution.neighbour === named);
  const { hip, name, azimuthDeg, altitudeDeg, cautions } = star;
  return {
    hip,
    name,
    azimuthDeg,
    altitudeDeg,
    usable: reasons.length === 0,
    reasons,
    cautions,
    lookAlike,
    cautionNamed,
  };
}

/** Only a star too faint to be usable is missing from the key: its look-alikes do not matter. */
function freshStar(
  variant: JudgedSky,
  catalogue: StarCatalogue,
  hip: number,
): AnswerKeyStar | null {
  const sky = seenSky({
    scenario: variant.scenario,
    frame: variant.frame,
    catalogue,
    keep: (star) => star.hip === hip,
  });
  const [star] = sky.stars;
  if (star === undefined) return null;
  const { name, azimuthDeg, altitudeDeg, magnitude } = star;
  const reasons = unusableReasons(star, variant.scenario, sky);
  const usable = reasons.length === 0;
  return { hip, name, azimuthDeg, altitudeDeg, magnitude, usable, reasons, cautions: [] };
}

function asMerged(catalogue: StarCatalogue, id: SkyObjectId): SkyObjectId {
  const hip = /^hip-(\d+)$/.exec(id)?.[1];
  const star = hip === undefined ? undefined : mergedStarOf(catalogue, Number(hip));
  return star === undefined ? id : `hip-${star.hip}`;
}
