import { describe, it } from 'vitest';
import { expectFullMarksOnEvery } from '@/tests/support/run-robot';
import { randomRunNights } from '@/tests/support/run-nights';

// With its northern half: 1,000 nights, three telescopes, both computers, every kind of run,
// needles up to 30° off, latitudes to 70°.
describe('a robot that steers by the true sky, on the southern half of the Earth', () => {
  it.each([
    [-35, 0],
    [-70, -35],
  ])(
    'gets full marks between %i° and %i° (250 nights)',
    (from, to) => {
      expectFullMarksOnEvery(randomRunNights(`south ${from}`, 250, [from, to], 'mixed'));
    },
    300_000,
  );
});
