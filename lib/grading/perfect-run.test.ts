import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningJson, frameOf } from '@/tests/support/evening';
import { replayRun } from '../alignment/alignment-run';
import { parseRunScenario } from '../alignment/parse-run-scenario';
import { perfectLog } from '../alignment/perfect-operator';
import { kitFrom, setupFrom } from '../alignment/run-scenario';
import { starSeenAt, trueSky } from '../alignment/run-sky';
import { loadCatalogue } from '../content/sky-catalogue';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { separationDeg } from '../units/vector';
import { perfectRun, type PerfectRun } from './perfect-run';

function inputFor(changes: object) {
  const parsed = parseRunScenario({ ...eveningJson, ...changes });
  if (!parsed.ok) throw new Error(parsed.problems.map(({ field }) => field).join());
  const { scenario, groups } = parsed;
  const frame = frameOf(scenario);
  const input = {
    scenario,
    frame,
    catalogue: loadCatalogue(),
    setup: setupFrom(groups, scenario, frame),
    kit: kitFrom(groups, scenario),
    givenHip: null,
    proposals: null,
    mayPause: false,
  };
  return { input, key: storedAnswerKey({ ...input, instant: frame.instant }) };
}
const outcomeOf = (changes: object) => {
  const { input, key } = inputFor(changes);
  return perfectRun(input, key);
};
function made(changes: object): PerfectRun {
  const run = outcomeOf(changes);
  if (run.stars === null) throw new Error(run.reason);
  return run;
}
const telescope = (changes: object) => ({ telescope: { ...eveningJson.telescope, ...changes } });

describe('a perfect operator', () => {
  it.each(['solved-zero', 'fixed-zero'])(
    'on a faultless mount hits every target (%s)',
    (computer) => {
      const run = made(telescope({ computer }));
      expect(run.outcome.kind).toBe('agree');
      // 15″ encoders.
      expect(Math.abs(run.outcome.mismatchArcmin ?? NaN)).toBeLessThan(0.6);
      expect(run.hitRate).toBe(1);
      expect(run.rmsArcmin).toBeLessThan(1);
      expect(run.thirds.every(({ inField }) => inField)).toBe(true);
    },
  );

  it('takes the best pair of the key', () => {
    const { input, key } = inputFor({});
    expect(perfectRun(input, key).stars).toEqual(key.pairs[0]?.stars);
  });

  it('has the base and the zero told back by a computer that solves for it', () => {
    const setup = { base: { tiltDeg: 1.5, risesTowardsDeg: 200 }, altitudeZeroArcmin: 72 };
    const { outcome, hitRate } = made({ setup });
    expect(outcome.altitudeZeroDeg).toBeCloseTo(1.2, 1);
    expect(outcome.baseTiltDeg).toBeCloseTo(1.5, 1);
    expect(hitRate).toBe(1);
  });

  it('is told of a zero of 1° by a computer that takes it as set', () => {
    const setup = { altitudeZeroArcmin: 60 };
    const { outcome, rmsArcmin } = made({ ...telescope({ computer: 'fixed-zero' }), setup });
    expect(outcome.kind).toBe('disagree');
    expect(Math.abs(outcome.mismatchArcmin ?? 0)).toBeGreaterThan(10);
    expect(rmsArcmin).toBeNull();
  });

  it('cannot make good a tube that is a degree off its axis', () => {
    const worse = made({ setup: { coneArcmin: 60 } });
    expect(worse.rmsArcmin ?? 0).toBeGreaterThan(5 * (made({}).rmsArcmin ?? Infinity));
  });

  it('loses nothing by a clock that is ten minutes wrong: the alignment absorbs it', () => {
    const run = made({ setup: { clockErrorSeconds: 600 } });
    expect(run.outcome.kind).toBe('agree');
    expect(run.hitRate).toBe(1);
  });

  it('is told that the base lies on its side when the clock is two hours wrong', () => {
    const { outcome } = made({ setup: { clockErrorSeconds: 7200 } });
    expect(outcome.kind).toBe('base-on-its-side');
    // The sky turned by h about the pole takes the zenith along by t: cos t = sin²φ + cos²φ cos h.
    const [h, latitude] = [(7200 * 15.041) / 3600, 45.4].map((deg) => (deg * Math.PI) / 180);
    const cosTilt = Math.sin(latitude ?? 0) ** 2 + Math.cos(latitude ?? 0) ** 2 * Math.cos(h ?? 0);
    expect(outcome.baseTiltDeg).toBeCloseTo((Math.acos(cosTilt) * 180) / Math.PI, 1);
  });

  it('says so when the mount holds one star of every pair to be down', () => {
    const elsewhere = { believedPlace: { latitudeDeg: -45, longitudeDeg: 104 } };
    expect(outcomeOf({ setup: elsewhere })).toEqual({
      stars: null,
      reason: 'believed-below-the-horizon',
    });
  });

  it('cannot align under cloud', () => {
    const clouds = [{ azimuthDeg: 0, altitudeDeg: 90, radiusDeg: 90 }];
    expect(outcomeOf({ clouds })).toEqual({ stars: null, reason: 'no-usable-pair' });
  });

  it('centres both stars on the worst mount that a scenario may have', () => {
    const between = (least: number, most: number) =>
      fc.double({ min: least, max: most, noNaN: true });
    const way = fc.constantFrom(1, -1);
    const worst = fc.record({
      base: fc.record({ tiltDeg: between(0, 10), risesTowardsDeg: between(0, 359) }),
      altitudeZeroArcmin: between(-600, 600),
      coneArcmin: between(-120, 120),
      axisSkewArcmin: between(-120, 120),
      backlashArcmin: fc.record({ azimuth: between(0, 20), altitude: between(0, 20) }),
      finalApproach: fc.record({ azimuth: way, altitude: way }),
      encoderStepArcsec: between(0.1, 600),
      slewDegPerSecond: between(0.5, 20),
      clockErrorSeconds: between(-1800, 1800),
    });
    fc.assert(
      fc.property(worst, (setup) => {
        const { input, key } = inputFor({ setup });
        const { stars } = perfectRun(input, key);
        if (stars === null) throw new Error('half an hour leaves a pair above the horizon');
        const replay = replayRun(input, perfectLog(input, stars, { thirdHip: null, trust: true }));
        if (!replay.ok) throw new Error(replay.refusal.code);
        for (const { hip, atMs, view } of replay.confirms) {
          const star = starSeenAt(trueSky(input), hip, atMs) ?? [0, 0, -1];
          // Steps are made by the hundredth of an arcminute, in both axes.
          expect(separationDeg(view.tube, star) * 60).toBeLessThan(0.02);
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});
