import type { Lab } from '../variants/labs';

/** An attempt as files tell of it: what was done when, and what it came to as it is marked now. */
export type ExportedAttempt = {
  id: string;
  studentId: string;
  cardNumber: number;
  /** Empty where names are left out. */
  name: string;
  assignment: { id: string; title: string } | null;
  /** Counts from 1 among the marked parts of the assignment; null in practice of no part. */
  part: number | null;
  lab: Lab;
  /** The lab's name for a reader. */
  labTitle: string;
  mode: 'practice' | 'check';
  number: number;
  startedAt: Date;
  submittedAt: Date | null;
  returnedAt: Date | null;
  /** The share that lateness takes, 0–1. */
  latePenalty: number;
  mark: {
    /** 0–100, not rounded, before lateness. */
    total: number;
    /** By what lateness leaves of it. */
    passed: boolean;
    /** The gates that failed, by the words of the grader. */
    gates: readonly string[];
    graderVersion: number;
  } | null;
};
