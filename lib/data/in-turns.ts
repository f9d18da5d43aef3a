import { setImmediate } from 'node:timers/promises';

/** How long one request may hold the process at a stretch; a page is ready in a few of these. */
const stretchMs = 20;

/**
 * Others' turn between pieces of long work, one of these for each. Not at every piece: on a busy server
 * each turn is a wait for all who ask for something.
 */
export function givesWay(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < stretchMs) return;
    await setImmediate();
    since = performance.now();
  };
}

/** `of` of each, in order, with a turn for others between stretches: a class of 200 has ten thousand attempts. */
export async function mapInTurns<T, R>(items: readonly T[], of: (item: T) => R): Promise<R[]> {
  const pause = givesWay();
  const made: R[] = [];
  for (const item of items) {
    await pause();
    made.push(of(item));
  }
  return made;
}
