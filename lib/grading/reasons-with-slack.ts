import { directionFromAzAlt } from '../units/vector';
import type { AnswerKeyStar, UnusableReason } from '../pointing/answer-key';
import { unusableReasons, type Slack } from '../pointing/usable-stars';
import type { PairVariant } from '../variants/pair-variant';

/** What is asked of a variant of any lab in which stars are chosen. */
export type JudgedSky = Pick<PairVariant, 'scenario' | 'frame' | 'nakedEyeLimit'>;

/**
 * What speaks against a star of the answer key when every limit of the variant is moved by `slack`.
 * Whether it has a name and varies is what the key says of it: those have no limit to move.
 */
export function reasonsWithSlack(
  { scenario, frame: { moon }, nakedEyeLimit }: JudgedSky,
  star: AnswerKeyStar,
  slack: Slack,
): UnusableReason[] {
  const has = (code: UnusableReason['code']) => star.reasons.some((reason) => reason.code === code);
  return unusableReasons(
    { ...star, named: !has('no-name'), largeAmplitudeVariable: has('variable') },
    scenario,
    { nakedEyeLimit, moonDirection: directionFromAzAlt(moon.azimuthDeg, moon.altitudeDeg) },
    slack,
  );
}
