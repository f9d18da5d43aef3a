import { faultGraderVersion, gradeFault } from './grade-fault';
import { gradePair, pairGraderVersion } from './grade-pair';
import { gradeRun, runGraderVersion } from './grade-run';

/**
 * Every grader that ever marked an attempt, by version: a regrade of an old attempt runs the grader it
 * was marked with. When the rules change, the old grader moves to its own file and stays in its list.
 */
const pairGraders: ReadonlyMap<number, typeof gradePair> = new Map([
  [pairGraderVersion, gradePair],
]);
const runGraders: ReadonlyMap<number, typeof gradeRun> = new Map([[runGraderVersion, gradeRun]]);
const faultGraders: ReadonlyMap<number, typeof gradeFault> = new Map([
  [faultGraderVersion, gradeFault],
]);

/** The pair grader of a version, undefined for one that never was. */
export const pairGrader = (version: number) => pairGraders.get(version);
/** The same for the alignment run. */
export const runGrader = (version: number) => runGraders.get(version);
/** The same for "What went wrong?". */
export const faultGrader = (version: number) => faultGraders.get(version);

export { faultGraderVersion, pairGraderVersion, runGraderVersion };
