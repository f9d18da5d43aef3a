import type { ComponentType } from 'react';

/** What each way of looking at a bench is given. */
export type BenchViewProps<V, D> = {
  variant: V;
  draft: D;
  mode: 'practice' | 'check';
  /**
   * The work after an action, and what the status line says of it. Each is one step of undo; with
   * `merge`, as while something is dragged, all changes of one gesture are one step.
   */
  change: (next: D, said?: string, options?: { merge?: boolean }) => void;
};

/** One line of an answer, as it is read once more before it is sent. */
export type AnswerLine = { asked: string; answer: string };

/** What makes a lab of the common workbench. A constant of its module. */
export type BenchParts<V, D, S> = {
  emptyDraft: D;
  /** Null for what is no draft (any more). */
  readDraft: (json: unknown) => D | null;
  /** Null while something is missing; `missing` then says in words what. */
  submissionOf: (draft: D, variant: V) => S | null;
  /** Empty when all is there. */
  missing: (draft: D, variant: V) => string;
  /**
   * How many things have happened so far that fail a safety gate, where a lab has any. In a check what
   * happened has happened: nothing may take one back. Going on never makes them fewer, so what is merely
   * left undone for now, such as a cap still off, does not count here.
   */
  dangers?: (draft: D, variant: V) => number;
  /** The state in one short line: the panel folded, on a phone. */
  summary: (draft: D, variant: V) => string;
  /** "How to look at the bench" */
  viewLabel: string;
  /** "Bench": the first way of looking; the second is always a table. */
  drawingName: string;
  Drawing: ComponentType<BenchViewProps<V, D>>;
  /** The same bench without any drawing, with the same marks to be had. */
  Table: ComponentType<BenchViewProps<V, D>>;
  Panel: ComponentType<BenchViewProps<V, D>>;
  /** Up to three, each telling more. */
  hints: (variant: V, draft: D) => readonly string[];
  /** An answer in words: for its student before it is sent, and for the teacher's answer key. */
  review: (draft: D, variant: V) => readonly AnswerLine[];
};
