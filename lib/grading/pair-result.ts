import type { AnswerKeyPair, Caution, SkyObjectId, UnusableReason } from '../pointing/answer-key';
import type { PairTemplate } from '../variants/pair-variant';

export type PairStarResult = {
  hip: number;
  name: string;
  azimuthDeg: number;
  altitudeDeg: number;
  /** With the benefit of the dead band (0.1° in altitude, 0.05 mag). */
  usable: boolean;
  reasons: readonly UnusableReason[];
  /** What could be mistaken for it, most confusing first. */
  cautions: readonly Caution[];
  /** The neighbour the learner warned about. */
  lookAlike: SkyObjectId | null;
  cautionNamed: boolean;
};

export type PairFigures = Omit<AnswerKeyPair, 'mark'> & {
  names: readonly [string, string];
  positions: readonly [
    { azimuthDeg: number; altitudeDeg: number },
    { azimuthDeg: number; altitudeDeg: number },
  ];
};

export type PairCriterion = {
  id: 'first-star' | 'second-star' | 'geometry' | 'none-usable';
  earned: number;
  possible: number;
};

/** The biggest shortfall, as a code; the sentence is written in components/grading. */
export type PairAdvice =
  | { code: 'well-chosen' }
  | { code: 'said-none-rightly' }
  | { code: 'said-none-wrongly'; usablePairs: number }
  | { code: 'there-was-none' }
  | { code: 'star-unusable'; hip: number; reason: UnusableReason }
  | { code: 'look-alike-missed'; hip: number; caution: Caution }
  | { code: 'too-close'; separationDeg: number }
  | { code: 'same-azimuth'; azimuthGapDeg: number }
  | { code: 'nearly-opposite'; separationDeg: number }
  | { code: 'better-pair'; hitRate: number; bestHitRate: number };

/** Marks and feedback of one submission; what the student and the teacher are shown. */
export type PairResult = {
  lab: 'pick-the-pair';
  graderVersion: number;
  template: PairTemplate;
  /** 0–100, not rounded. */
  total: number;
  criteria: readonly PairCriterion[];
  stars: readonly PairStarResult[];
  /** The chosen pair's worth; null when nothing was chosen. */
  chosen: PairFigures | null;
  /** The best that this variant allowed; null when no pair was usable. */
  best: PairFigures | null;
  advice: PairAdvice;
};
