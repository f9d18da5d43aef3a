export type CountingRule = 'best' | 'last' | 'first' | 'average';

/** One marked attempt, in the order of its number. `latePenalty` is the share that lateness takes. */
export type MarkedAttempt = { raw: number; latePenalty: number };

export type CountedMark = {
  mark: number;
  /** Of the attempt that counts; null when the mark is an average of several. */
  raw: number | null;
  latePenalty: number | null;
};

const afterPenalty = ({ raw, latePenalty }: MarkedAttempt): number => raw * (1 - latePenalty);

const counted = (attempt: MarkedAttempt): CountedMark => ({
  mark: afterPenalty(attempt),
  raw: attempt.raw,
  latePenalty: attempt.latePenalty,
});

/**
 * The mark of an assignment from its attempts, not rounded; null when there is none. Lateness is
 * taken off each attempt before the rule is applied, so that a late improvement is compared at what
 * it is worth.
 */
export function countedMark(
  attempts: readonly MarkedAttempt[],
  rule: CountingRule,
): CountedMark | null {
  const [first] = attempts;
  const last = attempts.at(-1);
  if (first === undefined || last === undefined) return null;
  switch (rule) {
    case 'first':
      return counted(first);
    case 'last':
      return counted(last);
    case 'best':
      return counted(
        attempts.reduce((best, attempt) =>
          afterPenalty(attempt) > afterPenalty(best) ? attempt : best,
        ),
      );
    case 'average':
      return attempts.length === 1
        ? counted(first)
        : {
            mark:
              attempts.reduce((sum, attempt) => sum + afterPenalty(attempt), 0) / attempts.length,
            raw: null,
            latePenalty: null,
          };
  }
}
