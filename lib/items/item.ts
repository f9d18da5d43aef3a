import type { ItemDrawing } from '../drawings/drawing';
import type { MisconceptionId } from './misconceptions';

type Common = {
  /** One or two sentences; every number with its unit. */
  prompt: string;
  drawing?: ItemDrawing;
  /** How one gets there; told with every answer. */
  explanation: string;
  /** "Predict, then see": what happens, drawn with the feedback. */
  afterwards?: ItemDrawing;
};

type Reasoned = {
  id: string;
  text: string;
  /** Why it is right or wrong, in full sentences to the learner. */
  reason: string;
  misconception?: MisconceptionId;
};

/** One is right. */
export type ChoiceItem = Common & { kind: 'choice'; options: readonly Reasoned[]; key: string };

/** Several are right: at least one, and not all. */
export type SeveralItem = Common & {
  kind: 'several';
  options: readonly (Reasoned & { right: boolean })[];
};

/** Put in order: every order that keeps all rules is right. */
export type OrderItem = Common & {
  kind: 'order';
  steps: readonly { id: string; text: string }[];
  /** What must come before what, and why; a graph without circles. */
  rules: readonly { first: string; then: string; reason: string }[];
};

/** Each on the left belongs to one on the right; the right side may have more. */
export type MatchItem = Common & {
  kind: 'match';
  left: readonly { id: string; text: string }[];
  right: readonly { id: string; text: string }[];
  pairs: readonly { left: string; right: string; reason: string }[];
};

/** Full within `full` of the key, nothing beyond `zero`, a straight line between; relative: shares of the key. */
export type Tolerance = { mode: 'absolute' | 'relative'; full: number; zero: number };

export type NumericItem = Common & {
  kind: 'numeric';
  /** Spelt out: "degrees". */
  unit: string;
  key: number;
  tolerance: Tolerance;
  /** Azimuths: 359 is 2 away from 1. */
  wrapsAt360?: boolean;
  /** Answers that a known slip leads to; further from the key than full marks reach. */
  slips: readonly { gives: number; reason: string; misconception?: MisconceptionId }[];
};

/** Point at one of several places in the drawing. */
export type PointItem = Common & {
  kind: 'point';
  drawing: ItemDrawing;
  spots: readonly {
    id: string;
    /** In the drawing's units. */
    x: number;
    y: number;
    /** Where it is, without saying what it is: "at the upper end of the tube". */
    where: string;
    /** Why it is right or wrong; says what is there. */
    reason: string;
    misconception?: MisconceptionId;
  }[];
  key: string;
};

export type ItemBody = ChoiceItem | SeveralItem | OrderItem | MatchItem | NumericItem | PointItem;

/** A question as it is asked and kept: its family and template say where it came from. */
export type Item = { family: string; template: string; generatorVersion: number } & ItemBody;
