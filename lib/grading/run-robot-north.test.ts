import { describe, it } from 'vitest';
import { expectFullMarksOnEvery } from '@/tests/support/run-robot';
import { randomRunNights } from '@/tests/support/run-nights';

// With its southern half: 1,000 nights, three telescopes, both computers, every kind of run,
// needles up to 30° off, latitudes to 70°.
describe('a robot that steers by the true sky, on the northern half of the Earth', () => {
  it.each([
    [0, 35],
    [35, 70],
  ])(
    'gets full marks between %i° and %i° (250 nights)',
    (from, to) => {
      expectFullMarksOnEvery(randomRunNights(`north ${from}`, 250, [from, to], 'mixed'));
    },
    300_000,
  );
});
