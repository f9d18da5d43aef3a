import { describe, expect, it } from 'vitest';
import { readNumber } from './read-number';

describe('a typed number', () => {
  it.each([
    ['12,5', 12.5],
    [' 12.5° ', 12.5],
    ['−3', -3],
    ['35 degrees', 35],
    ['+7', 7],
    ['56×', 56],
    ['9 mm', 9],
    ['4 h', 4],
    ['12 V', 12],
  ])('is read from %j as %f', (typed, value) => {
    expect(readNumber(typed)).toBe(value);
  });

  it.each(['', 'about 35', '1e3', '0x10', '3 5', '--3', 'NaN', 'Infinity', '.', '4 feet'])(
    'is not read from %j',
    (typed) => {
      expect(readNumber(typed)).toBeNull();
    },
  );
});
