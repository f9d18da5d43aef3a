import { describe, expect, test } from 'vitest';
import { emptyPairDraft, pairSubmissionSchema } from '@/lib/grading/pair-submission';
import type { PairChoice, PairChoiceAction } from './pair-choice';
import {
  changeChoice,
  indexAfterProposal,
  proposalOf,
  stageOf,
  startChoice,
  submissionOf,
} from './pair-choice';

const free = { task: 'free-pair', givenHip: null, proposals: null } as const;
const after = (start: PairChoice, ...actions: PairChoiceAction[]): PairChoice =>
  actions.reduce(changeChoice, start);

describe('choosing a pair', () => {
  const start = startChoice(emptyPairDraft, free);
  const both = after(start, { type: 'keep', hip: 24608 }, { type: 'keep', hip: 91262 });

  test('goes from star to star, then asks about each, then shows all for review', () => {
    expect(stageOf(start).at).toBe('first-star');
    expect(stageOf(after(start, { type: 'keep', hip: 24608 })).at).toBe('second-star');
    expect(stageOf(both)).toEqual({ at: 'look-alike', hip: 24608 });
    const one = after(both, { type: 'answer', hip: 24608, lookAlike: null });
    expect(stageOf(one)).toEqual({ at: 'look-alike', hip: 91262 });
    expect(stageOf(after(one, { type: 'answer', hip: 91262, lookAlike: 'jupiter' })).at).toBe(
      'review',
    );
  });

  test('what is sent is what the server’s schema takes, and nothing before all is answered', () => {
    expect(submissionOf(both, null)).toBeNull();
    const done = after(
      both,
      { type: 'answer', hip: 24608, lookAlike: 'hip-25428' },
      { type: 'answer', hip: 91262, lookAlike: null },
    );
    const sent = submissionOf(done, null);
    expect(sent).toEqual({
      kind: 'pair',
      stars: [
        { hip: 24608, lookAlike: 'hip-25428' },
        { hip: 91262, lookAlike: null },
      ],
    });
    expect(pairSubmissionSchema.safeParse(sent).success).toBe(true);
  });

  test('the same star is not kept twice, nor a third one', () => {
    expect(after(both, { type: 'keep', hip: 24608 })).toBe(both);
    expect(after(both, { type: 'keep', hip: 11767 })).toBe(both);
  });

  test('undo takes back one step at a time, to the beginning and no further', () => {
    expect(after(both, { type: 'undo' }).draft.picks).toHaveLength(1);
    expect(after(both, { type: 'undo' }, { type: 'undo' }, { type: 'undo' }).draft).toEqual(
      start.draft,
    );
  });

  test('a replaced star loses its answer', () => {
    const answered = after(
      both,
      { type: 'answer', hip: 24608, lookAlike: null },
      { type: 'drop', hip: 24608 },
    );
    expect(stageOf(answered).at).toBe('second-star');
    expect(stageOf(after(answered, { type: 'keep', hip: 24608 }))).toEqual({
      at: 'look-alike',
      hip: 91262,
    });
  });

  test('"no good pair" can be said at any time and taken back without losing the picks', () => {
    const none = after(both, { type: 'say-none' });
    expect(submissionOf(none, null)).toEqual({ kind: 'none-usable' });
    expect(after(none, { type: 'unsay-none' }).draft.picks).toEqual(both.draft.picks);
  });
});

test('a given star stands first, is sent first and is not asked about', () => {
  const start = startChoice(
    { ...emptyPairDraft, picks: [{ hip: 5, lookAlike: null }] },
    { task: 'partner', givenHip: 91262, proposals: null },
  );
  expect(start.draft.picks.map(({ hip }) => hip)).toEqual([91262, 5]);
  expect(stageOf(start)).toEqual({ at: 'look-alike', hip: 5 });
  const sent = submissionOf(after(start, { type: 'answer', hip: 5, lookAlike: null }), 91262);
  expect(sent).toMatchObject({ stars: [{ hip: 91262 }, { hip: 5 }] });
});

test('the mount’s proposals come in order; kept and refused ones do not come again', () => {
  const proposals = [1, 2, 3];
  const start = startChoice(emptyPairDraft, {
    task: 'mount-proposes',
    givenHip: null,
    proposals,
  });
  expect(proposalOf(start, proposals)).toBe(1);
  const refused = after(start, {
    type: 'another-star',
    nextIndex: indexAfterProposal(start, proposals, 1),
  });
  expect(proposalOf(refused, proposals)).toBe(2);
  const kept = after(refused, { type: 'keep', hip: 2 });
  expect(proposalOf(kept, proposals)).toBe(3);
  const usedUp = after(kept, {
    type: 'another-star',
    nextIndex: indexAfterProposal(kept, proposals, 3),
  });
  expect(proposalOf(usedUp, proposals)).toBeNull();
  expect(proposalOf(after(usedUp, { type: 'first-proposal-again' }), proposals)).toBe(1);
});
