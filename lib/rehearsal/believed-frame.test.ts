import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnBetweenDeg } from '@/tests/support/sky-turn';
import { skyFrameAt } from '../sky/frame-at';
import { believedFrame } from './believed-frame';

const frameFor = (ms: number, latitudeDeg: number, longitudeDeg: number) =>
  skyFrameAt({
    instant: new Date(ms),
    place: { latitudeDeg, longitudeDeg, elevationM: 0 },
  });

const slips = fc.record({
  ms: fc.integer({ min: Date.UTC(2025, 0, 1), max: Date.UTC(2028, 0, 1) }),
  latitudeDeg: fc.double({ min: -65, max: 65, noNaN: true }),
  longitudeDeg: fc.double({ min: -179, max: 179, noNaN: true }),
  northDeg: fc.double({ min: -20, max: 20, noNaN: true }),
  eastDeg: fc.double({ min: -180, max: 180, noNaN: true }),
});

/** Arcseconds between what is worked out here and what an ephemeris gives for the believed clock and place. */
function offArcsec(
  clockSeconds: number,
  { ms, latitudeDeg, longitudeDeg, northDeg, eastDeg }: Slipped,
): number {
  const believed = believedFrame(frameFor(ms, latitudeDeg, longitudeDeg), latitudeDeg, {
    clockSeconds,
    latitudeDeg: northDeg,
    longitudeDeg: eastDeg,
  });
  const asked = frameFor(
    ms + 1000 * clockSeconds,
    latitudeDeg + northDeg,
    ((longitudeDeg + eastDeg + 540) % 360) - 180,
  );
  return 3600 * turnBetweenDeg(believed, asked);
}
type Slipped = typeof slips extends fc.Arbitrary<infer Value> ? Value : never;

// Against astronomy-engine, which is asked for the believed instant and place itself.
describe('the sky that a computer believes in', () => {
  it('is that of the instant and place it was told, to 1″ for hours and half the world', () => {
    fc.assert(
      fc.property(slips, fc.integer({ min: -14_400, max: 14_400 }), (slip, seconds) => {
        expect(offArcsec(seconds, slip)).toBeLessThan(1);
      }),
      { numRuns: 200 },
    );
  });

  it('is so to 25″ for a date that is months wrong', () => {
    fc.assert(
      fc.property(slips, fc.integer({ min: -150, max: 150 }), (slip, days) => {
        expect(offArcsec(86_400 * days, slip)).toBeLessThan(25);
      }),
      { numRuns: 200 },
    );
  });

  it('is the true one where nothing was told wrongly', () => {
    const frame = frameFor(Date.UTC(2026, 11, 5), 50, 8);
    const slip = { clockSeconds: 0, latitudeDeg: 0, longitudeDeg: 0 };
    expect(believedFrame(frame, 50, slip)).toBe(frame);
  });

  it('keeps the instant that the clock says, whatever the place', () => {
    const frame = frameFor(Date.UTC(2026, 11, 5), 50, 8);
    const slip = { clockSeconds: 3600, latitudeDeg: 1, longitudeDeg: -16 };
    expect(believedFrame(frame, 50, slip).instant).toBe('2026-12-05T01:00:00.000Z');
  });
});
