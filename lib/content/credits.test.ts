import { describe, expect, test } from 'vitest';
import { loadCredits, parseCredits } from './credits';

const sample = `# Thanks

Some words.

## Stars

- Files: a.csv
- Credit: A survey
- Source: https://example.org/stars
- Licence: CC0 1.0, https://creativecommons.org/publicdomain/zero/1.0/
- Changes: none
`;

describe('credits', () => {
  test('a part is its heading and its lines, the licence with its address', () => {
    expect(parseCredits(sample)).toEqual([
      {
        part: 'Stars',
        credit: 'A survey',
        source: 'https://example.org/stars',
        licence: 'CC0 1.0',
        licenceUrl: 'https://creativecommons.org/publicdomain/zero/1.0/',
        changes: 'none',
      },
    ]);
  });
  test('a part without its licence is refused by name', () => {
    expect(() => parseCredits(sample.replace(/- Licence.*\n/, ''))).toThrow(
      '"Stars" has no line "- Licence: …"',
    );
  });
  test('the credits that come with the product name stars, places and typeface', () => {
    const parts = loadCredits().map(({ part }) => part);
    expect(parts).toEqual(expect.arrayContaining(['Stars', 'Places', 'Typeface']));
  });
});
