/** Steps of speed on either side of a rocker strip's middle. */
export const rockerSteps = 5;

/** This share of half the strip stands still, so that a resting thumb moves nothing. */
const stillShare = 0.1;
/** A step is left only when the thumb is this share of a step beyond its edge: no flutter. */
const reluctance = 0.18;

/**
 * The step of speed for a press `offset` away from a strip's middle, where the strip reaches `half`
 * to either side (any unit, the same for both). The farther, the faster; beyond the end it stays at
 * the fastest. `before` is the step until now.
 */
export function rockerStep(offset: number, half: number, before: number): number {
  const share = Math.abs(offset) / half;
  // 0 at the edge of the still part, 5 at the end of the strip.
  const along = ((share - stillShare) / (1 - stillShare)) * rockerSteps;
  const sign = offset < 0 ? -1 : 1;
  const was = before * sign;
  // Between two steps, the one that was held until now is kept for a little longer.
  const leaving = was > 0 && along > was - 1 - reluctance && along < was + reluctance;
  if (leaving) return before;
  if (along <= 0) return 0;
  return sign * Math.min(rockerSteps, Math.ceil(along));
}

/** Where on a strip a step lies: the middle of its stretch, as a share of half the strip. */
export function rockerPlace(step: number): number {
  if (step === 0) return 0;
  const along = (Math.abs(step) - 0.5) / rockerSteps;
  return Math.sign(step) * (stillShare + along * (1 - stillShare));
}
