import type { RunStage } from '@/lib/alignment/run-state';
import type { RunModel } from './run-model';

/** A double click is no longer than this: common practice, no source. */
const doubleMs = 600;

/** A star that is confirmed is named by its stage: the second one is another press than the first. */
type Press = 'another-star' | RunStage;

const lastOf = new WeakMap<RunModel, { press: Press; atMs: number }>();

/**
 * Whether a press is the second of a double click, which would turn down a star that nobody has read
 * yet. By the wall's time, for the sky may stand still; kept by run, for the button is made anew at
 * each step.
 */
export function pressedTwice(model: RunModel, press: Press): boolean {
  const atMs = performance.now();
  const last = lastOf.get(model);
  if (last?.press === press && atMs - last.atMs < doubleMs) return true;
  lastOf.set(model, { press, atMs });
  return false;
}
