import { gradePair, pairGraderVersion, type PairGrading } from './grade-pair';

/**
 * Every grader that ever marked an attempt, by version: a regrade of an old attempt runs the grader it
 * was marked with. When the rules change, the old grader moves to its own file and stays in this list.
 */
const pairGraders: ReadonlyMap<number, (input: Parameters<typeof gradePair>[0]) => PairGrading> =
  new Map([[pairGraderVersion, gradePair]]);

/** The pair grader of a version, undefined for one that never was. */
export const pairGrader = (version: number) => pairGraders.get(version);

export { pairGraderVersion };
