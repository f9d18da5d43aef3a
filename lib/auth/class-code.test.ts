import { expect, test } from 'vitest';
import {
  classCodeAlphabet,
  classCodeFrom,
  formatClassCode,
  normaliseCardWords,
  normaliseClassCode,
} from './class-code';

test('the alphabet has 32 different signs and none of the look-alikes', () => {
  expect(new Set(classCodeAlphabet).size).toBe(32);
  expect(classCodeAlphabet).not.toMatch(/[IO01]/);
});

test('a code is made of eight signs of the alphabet', () => {
  expect(classCodeFrom(Uint8Array.of(0, 1, 31, 32, 63, 8, 255, 9))).toBe('23Z2ZAZB');
  expect(() => classCodeFrom(Uint8Array.of(1))).toThrow(RangeError);
});

test.each(['23za-kqwz', ' 23ZA KQWZ ', '23ZA–KQWZ', '２３zakqwz'])(
  '"%s" is read as 23ZAKQWZ',
  (typed) => {
    expect(normaliseClassCode(typed)).toBe('23ZAKQWZ');
  },
);

test('the printed form reads back as the code', () => {
  expect(formatClassCode('23ZAKQWZ')).toBe('23ZA-KQWZ');
  expect(normaliseClassCode(formatClassCode('23ZAKQWZ'))).toBe('23ZAKQWZ');
});

test.each(['Apple River Stone', 'apple-river-stone', '  APPLE,river · stone. '])(
  '"%s" is read as apple-river-stone',
  (typed) => {
    expect(normaliseCardWords(typed)).toBe('apple-river-stone');
  },
);
