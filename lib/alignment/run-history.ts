import type { AxisMotion } from './axis-motion';
import type { Motion } from './motion';
import type { Past, Run } from './run';

/** A stretch in which each axis turns at one speed. */
export type Stretch = {
  motion: Motion;
  fromMs: number;
  toMs: number;
  /** How fast the two axes turn together, without the tracking. */
  degPerSecond: number;
};

/**
 * What the telescope did since the start position was set, up to an instant not before the last
 * action: stretch after stretch, oldest first. The tube jumps between two of them only where it was
 * moved by hand or by an accident.
 */
export function stretchesOf(run: Run, untilMs: number): Stretch[] {
  const motions: Motion[] = [run.motion];
  for (let past: Past | null = run.past; past !== null; past = past.before) {
    motions.push(past.motion);
  }
  motions.reverse();
  // The first is from before the start position.
  return motions
    .slice(1)
    .flatMap((motion, i) => stretchesIn(motion, motions[i + 2]?.startMs ?? untilMs));
}

function stretchesIn(motion: Motion, endMs: number): Stretch[] {
  const seconds = Math.max(0, endMs - motion.startMs) / 1000;
  const borders = [...bordersOf(motion.azimuth), ...bordersOf(motion.altitude), seconds]
    .filter((border) => border <= seconds)
    .sort((a, b) => a - b);
  let from = 0;
  return borders.flatMap((to, i) => {
    if (to === from && i < borders.length - 1) return [];
    const middle = (from + to) / 2;
    const stretch = {
      motion,
      fromMs: motion.startMs + from * 1000,
      toMs: motion.startMs + to * 1000,
      degPerSecond: speedAt(motion.azimuth, middle) + speedAt(motion.altitude, middle),
    };
    from = to;
    return [stretch];
  });
}

function bordersOf({ legs }: AxisMotion): number[] {
  let at = 0;
  return legs.map(({ seconds }) => (at += seconds));
}

function speedAt({ legs }: AxisMotion, seconds: number): number {
  let left = seconds;
  for (const leg of legs) {
    if (left < leg.seconds) return Math.abs(leg.degPerSecond);
    left -= leg.seconds;
  }
  return 0;
}
