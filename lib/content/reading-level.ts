export type ReadingLevel = {
  words: number;
  sentences: number;
  wordsPerSentence: number;
  /** School grade by Kincaid's formula; age is about five more. */
  grade: number;
};

/** Syllables of an English word, by counting groups of vowels; a silent final e is left out. */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replaceAll(/[^a-z]/g, '');
  if (letters.length <= 3) return letters.length === 0 ? 0 : 1;
  const spoken = letters
    .replace(/(?:(?<=[aeiouy]l)es?|(?<=[^laeiouy])es?|(?<=[^aeiouytd])ed)$/, '')
    .replace(/^y/, '');
  return Math.max(1, spoken.match(/[aeiouy]{1,2}/g)?.length ?? 1);
}

/**
 * Kincaid et al. 1975 (Research Branch Report 8-75): 0.39 words/sentence + 11.8 syllables/word
 * − 15.59. An indication only: syllables are counted by rule.
 */
export function readingLevel(text: string): ReadingLevel {
  const sentences = text
    .split(/(?<=[.!?:])\s+|\n+/)
    .map((sentence) => sentence.match(/[A-Za-zÀ-ž][A-Za-zÀ-ž'’-]*|\d[\d.,]*/g) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  if (words.length === 0) return { words: 0, sentences: 0, wordsPerSentence: 0, grade: 0 };
  const spoken = words.reduce((sum, word) => sum + Math.max(1, syllables(word)), 0);
  const wordsPerSentence = words.length / sentences.length;
  return {
    words: words.length,
    sentences: sentences.length,
    wordsPerSentence,
    grade: 0.39 * wordsPerSentence + (11.8 * spoken) / words.length - 15.59,
  };
}
