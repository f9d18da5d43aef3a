import type { Skill } from '../course/skills';
import { reachesPassMark, type Marked } from './pass-mark';

/** One piece of work that tells something of one skill: a question answered, or a lab handed in. */
export type Evidence = {
  skill: Skill;
  /** What kind of task it was: 'legs-before-tray/point-at-it', 'level/tilt-question'. */
  template: string;
  /** 0–100, not rounded. */
  mark: number;
  /** What counts as passed: the assignment's own, or {@link practicePassMark}. */
  passMark: number;
  /** A gate that failed: not passed, whatever the mark. */
  gateFailed: boolean;
  /** When it was handed in. */
  at: Date;
};

/** Where no teacher has set one; our judgement. */
export const practicePassMark = 80;

/** Whoever got nothing right has shown nothing, even where a teacher lets a mark of 0 pass. */
export const passes = (work: Marked): boolean => work.mark > 0 && reachesPassMark(work);
