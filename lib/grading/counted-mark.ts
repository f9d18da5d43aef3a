export type CountingRule = 'best' | 'last' | 'first' | 'average';

/** One marked attempt, in the order of its number. `latePenalty` is the share that lateness takes. */
export type MarkedAttempt = { raw: number; latePenalty: number; gateFailed: boolean };

export type CountedMark<Attempt extends MarkedAttempt = MarkedAttempt> = {
  mark: number;
  /** The attempt that counts; the last of those that went into an average. */
  attempt: Attempt;
  /** Of the attempt that counts; null when the mark is an average of several. */
  raw: number | null;
  latePenalty: number | null;
  /** In what counts: then the assignment is "not yet", whatever the mark. */
  gateFailed: boolean;
};

/**
 * Takes the noise of adding and multiplying binary fractions off a mark, and nothing a teacher could
 * mean: 100 less 35 % is 65, not 64.99999999999999, which would miss a pass mark of 65.
 */
export const withoutNoise = (mark: number): number => Math.round(mark * 1e9) / 1e9;

/** What is left of an attempt's mark when lateness has taken its share. The only place that says so. */
export const afterPenalty = ({
  raw,
  latePenalty,
}: Pick<MarkedAttempt, 'raw' | 'latePenalty'>): number => withoutNoise(raw * (1 - latePenalty));

const counted = <Attempt extends MarkedAttempt>(attempt: Attempt): CountedMark<Attempt> => ({
  mark: afterPenalty(attempt),
  attempt,
  raw: attempt.raw,
  latePenalty: attempt.latePenalty,
  gateFailed: attempt.gateFailed,
});

/** No mark makes up for a failed gate. */
const isBetter = (one: MarkedAttempt, other: MarkedAttempt): boolean =>
  one.gateFailed === other.gateFailed ? afterPenalty(one) > afterPenalty(other) : other.gateFailed;

/**
 * The mark of an assignment from its attempts, rounded to nothing a teacher could see; null when there is none. Lateness is
 * taken off each attempt before the rule is applied, so that a late improvement is compared at what
 * it is worth. An average has failed a gate when any of its attempts has.
 */
export function countedMark<Attempt extends MarkedAttempt>(
  attempts: readonly Attempt[],
  rule: CountingRule,
): CountedMark<Attempt> | null {
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
        attempts.reduce((best, attempt) => (isBetter(attempt, best) ? attempt : best)),
      );
    case 'average':
      return attempts.length === 1
        ? counted(first)
        : {
            mark: withoutNoise(
              attempts.reduce((sum, attempt) => sum + afterPenalty(attempt), 0) / attempts.length,
            ),
            attempt: last,
            raw: null,
            latePenalty: null,
            gateFailed: attempts.some(({ gateFailed }) => gateFailed),
          };
  }
}
