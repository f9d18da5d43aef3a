import type { MisconceptionId } from './misconceptions';

/** What an answer alone came to; sentences are to the learner. */
export type Judgement = {
  /** 0–1. */
  mark: number;
  /** About the learner's own answer, most important first. */
  said: readonly string[];
  misconceptions: readonly MisconceptionId[];
  /** The right answer, in words. */
  right: string;
};

export type ItemRefusal = {
  code: 'other-question' | 'no-answer' | 'unfinished' | 'not-a-number';
};

export type Judged = { ok: true; judgement: Judgement } | { ok: false; refusal: ItemRefusal };

export const refused = (code: ItemRefusal['code']): Judged => ({ ok: false, refusal: { code } });

/** The misconceptions that some of these carry, each once. */
export const namedIn = (
  chosen: readonly { misconception?: MisconceptionId }[],
): readonly MisconceptionId[] => [
  ...new Set(
    chosen.flatMap(({ misconception }) => (misconception === undefined ? [] : [misconception])),
  ),
];
