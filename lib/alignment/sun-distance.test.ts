import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningRun, honest } from '@/tests/support/evening-run';
import { separationDeg } from '../units/vector';
import { act, startRun, tubeAt } from './alignment-run';
import { perfectLog } from './perfect-operator';
import type { Run } from './run';
import type { RunAction } from './run-log';
import { replayRun } from './alignment-run';
import { trueSky } from './run-sky';
import { leastSunDistance, sunSeenAt } from './sun-distance';
import { makePose } from './tube-pose';

/** Ottawa at noon in June: the Sun stands high in the south. */
const noon = eveningRun({ scenario: { localTime: '2027-06-21T13:00' }, setup: honest });

const moved = (run: Run, actions: readonly RunAction[]): Run => {
  const after = actions.reduce<Run>((before, action) => act(before, action), run);
  if (after.refusal !== null) throw new Error(`refused: ${after.refusal.code}`);
  return after;
};

/** Melbourne at midday in June: the Sun stands due north, 29° high, where the tube is to face at first. */
const southernNoon = eveningRun({
  scenario: {
    place: { latitudeDeg: -37.8, longitudeDeg: 145, elevationM: 30 },
    localTime: '2027-06-21T12:20',
    timeZone: 'Australia/Melbourne',
  },
  setup: honest,
});

describe('the start position, where the Sun stands in the north', () => {
  const set = moved(startRun(southernNoon), [
    { at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 },
  ]);
  const rockers = (at: number, azimuth: number, altitude: number): RunAction => ({
    at,
    do: 'rockers',
    azimuth,
    altitude,
  });

  it('is nearer to the Sun than anything may come', () => {
    const sun = sunSeenAt(trueSky(southernNoon), 0);
    // 90° − 37.8° − 23.4° (Meeus, ch. 13, in the meridian).
    expect(sun === null ? NaN : separationDeg([0, 1, 0], sun)).toBeCloseTo(28.8, 0);
  });

  it('does not count while the motors have not moved', () => {
    expect(leastSunDistance(set, 600_000)).toBeNull();
    expect(leastSunDistance(moved(set, [{ at: 1000, do: 'stop' }]), 600_000)).toBeNull();
  });

  it('does not count while the tube leaves it, away from the Sun', () => {
    const gone = moved(set, [rockers(1000, 5, 0), { at: 31_000, do: 'stop' }]);
    expect(leastSunDistance(gone)?.distanceDeg).toBeGreaterThanOrEqual(30);
    // Halfway it is still on its way out, and coming back to it counts.
    const stopped = moved(set, [rockers(1000, 4, 0), { at: 2000, do: 'stop' }]);
    expect(leastSunDistance(stopped)).toBeNull();
    const back = moved(gone, [rockers(32_000, -5, 0), { at: 62_000, do: 'stop' }]);
    expect(leastSunDistance(back)?.distanceDeg).toBeLessThan(29.5);
    expect(leastSunDistance(back)?.atMs).toBeGreaterThan(32_000);
  });

  it('counts as soon as the tube goes nearer', () => {
    const up = moved(set, [rockers(1000, 0, 4), { at: 11_000, do: 'stop' }]);
    expect(leastSunDistance(up)?.distanceDeg).toBeLessThan(24);
  });

  it('that faces the Sun itself counts from the first move', () => {
    const facing = moved(startRun(southernNoon), [
      { at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 25 },
      rockers(1000, 5, 0),
      { at: 31_000, do: 'stop' },
    ]);
    expect(leastSunDistance(facing)?.distanceDeg).toBeLessThan(10);
  });
});

describe('how near the tube came to the Sun', () => {
  it('is what looking every five milliseconds finds, for any hand', () => {
    const hand = fc.tuple(
      fc.integer({ min: -5, max: 5 }),
      fc.integer({ min: -5, max: 5 }),
      fc.integer({ min: 100, max: 9000 }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.array(hand, { maxLength: 6 }),
        (azimuthDeg, hands) => {
          let run = act(startRun(noon), { at: 0, do: 'set-start', azimuthDeg, altitudeDeg: 20 });
          const pose = makePose();
          let least = 180;
          // What counts begins with the first move; one that stands all the time has come near nothing.
          const first = hands.findIndex(([azimuth, altitude]) => azimuth !== 0 || altitude !== 0);
          fc.pre(first >= 0);
          for (const [azimuth, altitude, forMs] of [...hands.slice(first), [0, 0, 1] as const]) {
            const from = run.lastMs;
            run = act(run, { at: from, do: 'rockers', azimuth, altitude });
            for (let at = from; at <= from + forMs; at += 5) {
              const sun = sunSeenAt(trueSky(noon), at);
              if (sun === null) throw new Error('the Sun is up at noon');
              tubeAt(run, at, pose);
              least = Math.min(least, separationDeg(pose.tube, sun), separationDeg(pose.dot, sun));
            }
            run = act(run, { at: from + forMs, do: 'stop' });
          }
          const found = leastSunDistance(run)?.distanceDeg ?? NaN;
          // Five milliseconds at the fastest of both rockers are 0.03°; the search is good to 0.05°.
          expect(Math.abs(found - least)).toBeLessThan(0.08);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('counts a slew that only passes by', () => {
    // From the north by way of east or west to a star in the south, as the Sun allows at noon.
    const log: RunAction[] = [
      { at: 0, do: 'set-start', azimuthDeg: 90, altitudeDeg: 65 },
      { at: 1000, do: 'rockers', azimuth: 5, altitude: 0 },
      { at: 61_000, do: 'stop' },
    ];
    const replay = replayRun(noon, log);
    if (!replay.ok) throw new Error('refused');
    const least = leastSunDistance(replay.run);
    expect(least?.distanceDeg).toBeLessThan(10);
    expect(least?.atMs).toBeGreaterThan(1000);
    expect(least?.atMs).toBeLessThan(61_000);
  });

  it('is nothing on a night without the Sun', () => {
    const input = eveningRun();
    const replay = replayRun(input, perfectLog(input));
    if (!replay.ok) throw new Error('refused');
    expect(leastSunDistance(replay.run)).toBeNull();
  });

  it('does not count where the telescope faced before it was set up', () => {
    const run = startRun(noon);
    expect(leastSunDistance(run, 60_000)).toBeNull();
  });

  it('begins with sunrise: the Sun counts from 0.833° below the horizon', () => {
    const dawn = eveningRun({ scenario: { localTime: '2027-06-21T05:00' }, setup: honest });
    const rises = [...Array(120).keys()].find((minute) =>
      sunSeenAt(trueSky(dawn), minute * 60_000),
    );
    // cos H = (sin −0.833° − sin φ sin δ) / (cos φ cos δ) with φ = 45.4°, δ = 23.44° (Meeus, ch. 15): 7 h
    // 50 m before the transit at 13:05 (12:00, +2.8 m for 75.7° W, +1.8 m equation of time, +1 h).
    expect(rises).toBeGreaterThanOrEqual(14);
    expect(rises).toBeLessThanOrEqual(16);
    const run = moved(
      act(startRun(dawn), { at: 0, do: 'set-start', azimuthDeg: 60, altitudeDeg: 0 }),
      [{ at: 0, do: 'step', azimuthArcmin: 1, altitudeArcmin: 0 }],
    );
    expect(leastSunDistance(run, 60_000)).toBeNull();
    const least = leastSunDistance(run, 7_200_000);
    expect(least?.atMs).toBeGreaterThan(13 * 60_000);
    expect(least?.distanceDeg).toBeLessThan(10);
  });
});
