import { describe, expect, it } from 'vitest';
import { eveningRun } from '@/tests/support/evening-run';
import { restlessLog } from '@/tests/support/restless-log';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { act, replayRun, startRun, viewAt } from './alignment-run';
import { bestStars } from './operator-stars';
import { perfectLog } from './perfect-operator';
import type { Run } from './run';
import type { RunAction } from './run-log';
import { longestLog } from './run-log';
import { mostSamples, samplesOf, tubePath, type PathPoint } from './run-path';

const input = eveningRun();
const log = perfectLog(input);

/** Where the tube was, by replaying no more than had been done by then. */
function tubeThen(atMs: number): Vector3 {
  const run = log
    .filter(({ at }) => at <= atMs)
    .reduce<Run>((before, action: RunAction) => act(before, action), startRun(input));
  return viewAt(run, atMs).tube;
}
const directionOf = (point: PathPoint) => directionFromAzAlt(point.azimuthDeg, point.altitudeDeg);

function pathOf(mostPoints?: number) {
  const replay = replayRun(input, log);
  if (!replay.ok) throw new Error('refused');
  const [first] = replay.confirms;
  return tubePath(replay.run, { fromMs: 0, toMs: first?.atMs ?? NaN, mostPoints });
}

describe('the path of the tube', () => {
  it('goes through where the tube was, in order', () => {
    const path = pathOf();
    expect(path.length).toBeGreaterThan(5);
    path.forEach((point, i) => {
      expect(point.atMs).toBeGreaterThanOrEqual(path[i - 1]?.atMs ?? 0);
      expect(separationDeg(directionOf(point), tubeThen(point.atMs))).toBeLessThan(1e-6);
    });
  });

  it('leaves nothing out that lies beside it', () => {
    const path = pathOf();
    const until = path.at(-1)?.atMs ?? NaN;
    for (let at = 0; at <= until; at += 250) {
      const next = path.findIndex(({ atMs }) => atMs >= at);
      const [a, b] = [path[Math.max(0, next - 1)], path[next]];
      if (a === undefined || b === undefined) throw new Error('a path with a gap');
      // On the way from one to the next: the way round by the tube is hardly longer.
      const tube = tubeThen(at);
      const detour =
        separationDeg(directionOf(a), tube) +
        separationDeg(tube, directionOf(b)) -
        separationDeg(directionOf(a), directionOf(b));
      expect(detour).toBeLessThan(0.02);
    }
  });

  it('has no more points than were asked for, with both ends', () => {
    const path = pathOf(6);
    expect(path.length).toBeLessThanOrEqual(6);
    expect(path[0]?.atMs).toBe(0);
    expect(path.at(-1)?.atMs).toBe(pathOf().at(-1)?.atMs);
  });

  it('is worked out from no more samples than ever are taken, of two hours at full speed too', () => {
    const stars = bestStars(input);
    if (stars === null) throw new Error('no pair');
    const replay = replayRun(input, restlessLog(input, stars));
    if (!replay.ok) throw new Error('refused');
    const [first] = replay.confirms;
    const whole = { fromMs: 0, toMs: first?.atMs ?? NaN };
    expect(whole.toMs).toBeGreaterThan(longestLog * 1000);
    const samples = samplesOf(replay.run, whole.fromMs, whole.toMs);
    expect(samples).toHaveLength(mostSamples);
    expect(samples[0]?.atMs).toBe(0);
    expect(samples.at(-1)?.atMs).toBe(whole.toMs);
    expect(tubePath(replay.run, { ...whole, mostPoints: 20 })).toHaveLength(20);
  });
});
