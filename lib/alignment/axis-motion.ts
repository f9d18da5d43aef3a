import { lagAfter } from './play';

/** One way, at one speed. */
type Leg = { degPerSecond: number; seconds: number };

/**
 * What an axis does from one action to the next: a few straight legs, then it stands. Being piecewise
 * linear it is known at any instant without stepping through the time between.
 */
export type AxisMotion = {
  fromDeg: number;
  /** Tube minus reading at the start; see play. */
  lagDeg: number;
  legs: readonly Leg[];
};

/** The play of an axis, and which way its last move must go. */
export type AxisPlay = { playDeg: number; approach: 1 | -1 };
/** Where an axis stands and how its tube hangs. */
type AxisRest = { fromDeg: number; lagDeg: number };
/** Between which readings an axis can turn. */
export type AxisRange = { leastDeg: number; mostDeg: number };

/** A step of more than this is made at the fast speed. */
const longStepDeg = 0.5;
const fastStepDegPerSecond = 0.6;
const fineStepDegPerSecond = 0.1;
/** How many times its play an axis goes beyond the target, to come back in the final direction. */
const overshootInPlays = 1.5;
/** Longer than any run: a rocker that is held. */
const heldSeconds = 86_400;

const leg = (byDeg: number, degPerSecond: number): Leg => ({
  degPerSecond: Math.sign(byDeg) * degPerSecond,
  seconds: Math.abs(byDeg) / degPerSecond,
});

export const resting = (at: AxisRest): AxisMotion => ({ ...at, legs: [] });

/** At a constant speed until the next action, or until the axis meets its stop. */
export function held(at: AxisRest, degPerSecond: number, range: AxisRange): AxisMotion {
  if (degPerSecond === 0) return resting(at);
  const byDeg = clipped(at.fromDeg, degPerSecond * heldSeconds, range);
  return { ...at, legs: [leg(byDeg, Math.abs(degPerSecond))] };
}

/** So far and no farther: quickly when it is far. */
export function stepped(at: AxisRest, byDeg: number, range: AxisRange): AxisMotion {
  const clippedDeg = clipped(at.fromDeg, byDeg, range);
  const speed = Math.abs(byDeg) > longStepDeg ? fastStepDegPerSecond : fineStepDegPerSecond;
  return clippedDeg === 0 ? resting(at) : { ...at, legs: [leg(clippedDeg, speed)] };
}

/** Like a go-to: it arrives in the final direction, with the play taken up, by way of beyond if need be. */
export function driven(
  at: AxisRest,
  byDeg: number,
  degPerSecond: number,
  { playDeg, approach }: AxisPlay,
  range: AxisRange,
): AxisMotion {
  const clippedDeg = clipped(at.fromDeg, byDeg, range);
  if (lagAfter(at.lagDeg, clippedDeg, playDeg, approach) === 0) {
    return clippedDeg === 0 ? resting(at) : { ...at, legs: [leg(clippedDeg, degPerSecond)] };
  }
  const backDeg = approach * overshootInPlays * playDeg;
  return { ...at, legs: [leg(clippedDeg - backDeg, degPerSecond), leg(backDeg, degPerSecond)] };
}

/** An axis that stands beyond its stop, put there by hand, can at least come back. */
function clipped(fromDeg: number, byDeg: number, { leastDeg, mostDeg }: AxisRange): number {
  const toDeg = Math.min(Math.max(fromDeg + byDeg, leastDeg), mostDeg);
  return byDeg < 0 ? Math.min(toDeg - fromDeg, 0) : Math.max(toDeg - fromDeg, 0);
}

export const secondsOf = ({ legs }: AxisMotion): number =>
  legs.reduce((sum, { seconds }) => sum + seconds, 0);

export function positionDeg({ fromDeg, legs }: AxisMotion, seconds: number): number {
  let left = seconds;
  let at = fromDeg;
  for (const { degPerSecond, seconds: whole } of legs) {
    at += degPerSecond * Math.min(left, whole);
    left -= whole;
    if (left <= 0) break;
  }
  return at;
}

/** Tube minus reading. Exact, since every leg goes one way. */
export function lagDegAt(
  { lagDeg, legs }: AxisMotion,
  seconds: number,
  playDeg: number,
  approach: 1 | -1,
): number {
  let left = seconds;
  let lag = lagDeg;
  for (const { degPerSecond, seconds: whole } of legs) {
    lag = lagAfter(lag, degPerSecond * Math.min(left, whole), playDeg, approach);
    left -= whole;
    if (left <= 0) break;
  }
  return lag;
}
