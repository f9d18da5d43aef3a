import { describe, expect, it } from 'vitest';
import { readingLevel, syllables } from './reading-level';

describe('reading level', () => {
  it.each([
    ['sky', 1],
    ['star', 1],
    ['stars', 1],
    ['moved', 1],
    ['altitude', 3],
    ['horizon', 3],
    ['telescope', 3],
    ['magnitude', 3],
    ['wanted', 2],
    ['table', 2],
  ])('counts %s as %i', (word, count) => {
    expect(syllables(word)).toBe(count);
  });

  it('puts one-syllable sentences of ten words at grade 0.11', () => {
    // 0.39 · 10 + 11.8 · 1 − 15.59 (Kincaid et al. 1975).
    const text = 'The cat sat on the mat and had a nap. The dog ran to the hill and dug a hole.';
    expect(readingLevel(text).grade).toBeCloseTo(0.11, 10);
  });

  it('rises with longer words and longer sentences', () => {
    const plain = readingLevel('The star is high. It is bright.').grade;
    const stiff = readingLevel(
      'Considerable instrumental uncertainties accumulate, notwithstanding meticulous observational preparation.',
    ).grade;
    expect(stiff).toBeGreaterThan(plain + 10);
  });

  it('has nothing to say about nothing', () => {
    expect(readingLevel('')).toEqual({ words: 0, sentences: 0, wordsPerSentence: 0, grade: 0 });
  });
});
