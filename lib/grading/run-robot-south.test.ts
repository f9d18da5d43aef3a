import { describe, it } from 'vitest';
import { expectFullMarks } from '@/tests/support/run-robot';
import { randomRunNights } from '@/tests/support/run-nights';

// With its northern half: 1,000 nights, three telescopes, both computers, latitudes to 70°.
describe('a robot that steers by the true sky, on the southern half of the Earth', () => {
  it.each([
    [-35, 0],
    [-70, -35],
  ])(
    'gets full marks between %i° and %i° (250 nights)',
    (from, to) => {
      for (const night of randomRunNights(`south ${from}`, 250, [from, to])) expectFullMarks(night);
    },
    120_000,
  );
});
