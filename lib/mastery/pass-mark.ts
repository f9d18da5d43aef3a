/** A mark with what it has to reach. */
export type Marked = {
  /** 0–100, not rounded. */
  mark: number;
  passMark: number;
  /** A safety gate that failed: not passed, whatever the mark. */
  gateFailed: boolean;
};

/** The noise of adding binary fractions, far below anything a mark could mean, costs nobody a pass. */
const noise = 1e-9;

/**
 * Whether work has passed, as the gradebook, its statistics and the files say it: the only place that
 * does. Where a teacher lets a mark of 0 pass, 0 passes too; what is not marked at all has no mark and is
 * not asked about. Whether it shows a skill is another question: `passes` in evidence.ts.
 */
export const reachesPassMark = ({ mark, passMark, gateFailed }: Marked): boolean =>
  !gateFailed && mark + noise >= passMark;
