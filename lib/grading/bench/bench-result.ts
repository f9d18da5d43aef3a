export type BenchCriterion<C extends string = string> = {
  id: C;
  earned: number;
  possible: number;
};

/**
 * What came of a bench task. `gates` holds the failed ones only: with one of them it is "not yet",
 * whatever the mark. `slips` holds what went wrong, worst first.
 */
export type BenchResult<
  L extends string = string,
  T extends string = string,
  C extends string = string,
  G extends { id: string } = { id: string },
  S extends { code: string } = { code: string },
> = {
  lab: L;
  graderVersion: number;
  template: T;
  /** 0–100, not rounded. */
  total: number;
  criteria: readonly BenchCriterion<C>[];
  gates: readonly G[];
  slips: readonly S[];
};

/** A refusal is for what cannot be anybody's answer; nothing is used up by it. */
export type BenchRefusal = { code: string; message: string };
export type BenchGrading<R> = { ok: true; result: R } | { ok: false; refusal: BenchRefusal };
