import { describe, expect, it } from 'vitest';
import { randomRunNights } from '@/tests/support/run-nights';
import { turnBetweenDeg } from '@/tests/support/sky-turn';
import { skyFrameAt } from '../sky/frame-at';
import { perfectOutcome, worthOfAlignment } from './alignment-worth';
import type { RunInput } from './run-input';
import { standOf, truthAtStart } from './start-position';

const start = { azimuthDeg: 0, altitudeDeg: 0 };

/** A faultless, level mount whose clock is so many minutes off, aligned on the best pair of a night. */
function* aligned(clockMinutes: number) {
  for (const { input, best } of randomRunNights('worth', 12, [-65, 65])) {
    const { frame, scenario, setup } = input;
    const believedMs = Date.parse(frame.instant) + clockMinutes * 60_000;
    const run: RunInput = {
      ...input,
      setup: {
        ...setup,
        base: { tiltDeg: 0, risesTowardsDeg: 0 },
        errors: { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
        believed: skyFrameAt({ instant: new Date(believedMs), place: scenario.place }),
      },
    };
    const truth = truthAtStart(standOf(run.setup), start, run.setup.errors);
    const outcome = perfectOutcome(
      run,
      [
        { hip: best[0], atMs: 30_000 },
        { hip: best[1], atMs: 150_000 },
      ],
      truth,
    );
    yield { run, truth, outcome };
  }
}

describe('what an alignment is worth', () => {
  it('is every target on a faultless mount', () => {
    for (const { run, truth, outcome } of aligned(0)) {
      const worth = outcome && worthOfAlignment(run, outcome, truth);
      expect(worth?.hitRate).toBe(1);
      // One count of the encoders is 0.25′.
      expect(worth?.rmsArcmin).toBeLessThan(1);
    }
  });

  // Design, "Which slip bites where": a wrong clock is absorbed for stars after a good two-star fit.
  // What is left is refraction, reckoned for where the stars are believed to stand.
  it('is not touched by a clock that is twelve minutes off', () => {
    for (const { run, truth, outcome } of aligned(12)) {
      expect(turnBetweenDeg(run.setup.believed, run.frame)).toBeGreaterThan(2.9);
      const worth = outcome && worthOfAlignment(run, outcome, truth);
      expect(worth?.hitRate).toBe(1);
      expect(worth?.rmsArcmin).toBeLessThan(3);
    }
  });

  it('is nothing where the two stars do not agree', () => {
    for (const { run, truth } of aligned(0)) {
      expect(worthOfAlignment(run, { kind: 'undetermined' }, truth)).toBeNull();
    }
  });

  it('falls when the mount leans after the alignment', () => {
    for (const { run, truth, outcome } of aligned(0)) {
      const leant = truthAtStart(
        standOf({ ...run.setup, base: { tiltDeg: 3, risesTowardsDeg: 100 } }),
        start,
        truth.errors,
      );
      const worth = outcome && worthOfAlignment(run, outcome, leant);
      expect(worth?.hitRate).toBeLessThan(0.2);
    }
  });
});
