/*
 * Two other ways of reckoning what a learner knows, with which the course's own rule (three in a row,
 * lib/mastery) can be compared. The product uses neither.
 */

/**
 * Bayesian knowledge tracing (A. Corbett and J. Anderson, User Modeling and User-Adapted Interaction 4
 * (1994) 253): how likely the skill is known after each answer, before and after the chance to learn.
 */
export function knowledgeTracing(
  answers: readonly boolean[],
  model: { known: number; learns: number; slips: number; guesses: number },
): { posterior: number; after: number }[] {
  let known = model.known;
  return answers.map((right) => {
    const knew = known * (right ? 1 - model.slips : model.slips);
    const not = (1 - known) * (right ? model.guesses : 1 - model.guesses);
    const posterior = knew / (knew + not);
    known = posterior + (1 - posterior) * model.learns;
    return { posterior, after: known };
  });
}

/** Exponential moving average from nothing: `keeps` of the value before, the rest of the answer. */
export function movingAverage(answers: readonly number[], keeps: number): number[] {
  let value = 0;
  return answers.map((answer) => (value = keeps * value + (1 - keeps) * answer));
}
