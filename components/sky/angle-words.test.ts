import fc from 'fast-check';
import { expect, test } from 'vitest';
import { angleInWords, angleWordsFor } from './angle-words';

test('angles are told in arcminutes below a degree and in degrees from there on', () => {
  expect(angleInWords(4.2)).toBe('4′');
  expect(angleInWords(-0.44)).toBe('0.4′');
  expect(angleInWords(0.01)).toBe('less than 0.1′');
  expect(angleInWords(0.97)).toBe('1′');
  expect(angleInWords(59.4)).toBe('59′');
  expect(angleInWords(59.6)).toBe('1.0°');
  expect(angleInWords(192)).toBe('3.2°');
});

test('angles of one line are told in one unit, and none of them as nothing', () => {
  const told = (...arcmins: number[]) => arcmins.map(angleWordsFor(...arcmins));
  expect(told(180, 27)).toEqual(['3.0°', '0.5°']);
  expect(told(12, 3)).toEqual(['12′', '3′']);
  expect(told(1, 900, 2)).toEqual(['less than 0.1°', '15.0°', 'less than 0.1°']);
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -10_800, max: 10_800, noNaN: true }), { minLength: 1 }),
      (arcmins) => {
        const words = told(...arcmins);
        expect(new Set(words.map((word) => word.at(-1))).size).toBe(1);
        for (const word of words) expect(word).not.toBe('0.0°');
      },
    ),
  );
});
