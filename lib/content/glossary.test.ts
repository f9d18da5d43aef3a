import { describe, expect, it } from 'vitest';
import { byFirstLetter, glossaryOf } from './glossary';

const lesson = (slug: string, ...terms: readonly string[]) => ({
  slug,
  frontMatter: {
    title: `About ${slug}`,
    vocabulary: terms.map((term) => ({ term, definition: `${term} in ${slug}` })),
  },
});

describe('the glossary', () => {
  it('tells a word once, as its first lesson does, and names every lesson that has it', () => {
    const entries = glossaryOf([lesson('one', 'tripod', 'Altitude'), lesson('two', 'altitude')]);
    expect(entries).toEqual([
      {
        term: 'Altitude',
        definition: 'Altitude in one',
        lessons: [
          { slug: 'one', title: 'About one' },
          { slug: 'two', title: 'About two' },
        ],
      },
      {
        term: 'tripod',
        definition: 'tripod in one',
        lessons: [{ slug: 'one', title: 'About one' }],
      },
    ]);
  });

  it('stands under first letters, capital or not', () => {
    const entries = glossaryOf([lesson('one', 'zenith', 'arm', 'Axis')]);
    expect(byFirstLetter(entries).map(({ letter, entries: own }) => [letter, own.length])).toEqual([
      ['A', 2],
      ['Z', 1],
    ]);
  });
});
