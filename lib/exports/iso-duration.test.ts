import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isoDuration } from './iso-duration';

test('a span is written in hours, minutes and seconds, and nothing that is nought', () => {
  expect(isoDuration(0)).toBe('PT0S');
  expect(isoDuration(90_000)).toBe('PT1M30S');
  expect(isoDuration(3_600_000)).toBe('PT1H');
  expect(isoDuration(2 * 86_400_000 + 1230)).toBe('PT48H1.23S');
  expect(isoDuration(59_999)).toBe('PT1M');
  expect(() => isoDuration(-1)).toThrow(RangeError);
});

/** ISO 8601 4.4.3.2 with hours as the largest unit, seconds with hundredths at most (xAPI 1.0.3, 4.6). */
const pattern = /^PT(?:(\d+)H)?(?:([1-5]?\d)M)?(?:([1-5]?\d(?:\.\d{1,2})?)S)?$/;

test('what is written reads back to the hundredth of a second', () => {
  fc.assert(
    fc.property(fc.nat({ max: 10 ** 10 }), (ms) => {
      const [, hours = 0, minutes = 0, seconds = 0] = pattern.exec(isoDuration(ms)) ?? [, NaN];
      const read = 1000 * (3600 * Number(hours) + 60 * Number(minutes) + Number(seconds));
      expect(Math.abs(read - ms)).toBeLessThan(5.001);
    }),
  );
});
