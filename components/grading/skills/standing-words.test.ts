import { describe, expect, it } from 'vitest';
import type { Mastery } from '@/lib/mastery/mastery';
import { standingWords } from './standing-words';

const day = (at: Date): string => at.toISOString().slice(0, 10);
const masteredAt = new Date('2026-11-02T10:00:00Z');
const nextReviewAt = new Date('2026-11-04T10:00:00Z');

const said = (standing: Partial<Mastery>): string =>
  standingWords(
    {
      state: 'practising',
      inARow: 0,
      masteredAt: null,
      nextReviewAt: null,
      reviewsPassed: 0,
      pieces: 1,
      lastAt: masteredAt,
      ...standing,
    },
    day,
  );

describe('where somebody stands, in words', () => {
  it('says how many are still to go', () => {
    expect(said({ inARow: 1 })).toBe('One passed in a row; two more of another kind.');
    expect(said({ inARow: 2 })).toBe('Two passed in a row; one more of another kind.');
    expect(said({ inARow: 0 })).toBe(
      'The last one was not passed, so the row begins anew: three to go.',
    );
    expect(said({ state: 'not-started' })).toBe('Nothing done yet.');
  });

  it('names the review that comes next, and when', () => {
    expect(said({ state: 'mastered', masteredAt, nextReviewAt })).toBe(
      'Mastered on 2026-11-02. The first review is due on 2026-11-04.',
    );
    expect(said({ state: 'review-due', masteredAt, nextReviewAt, reviewsPassed: 2 })).toBe(
      'Mastered on 2026-11-02. The last review has been due since 2026-11-04. One pass does it.',
    );
    expect(said({ state: 'kept', masteredAt, reviewsPassed: 3 })).toBe(
      'Mastered on 2026-11-02. All three reviews passed.',
    );
  });
});
