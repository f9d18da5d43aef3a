import { setImmediate } from 'node:timers/promises';
import { expect, test, vi } from 'vitest';
import { mapInTurns } from './in-turns';

test('a long list is made in its order, and others have their turn before it ends', async () => {
  const others: number[] = [];
  let made = 0;
  const other = (async () => {
    for (let turn = 0; turn < 50; turn += 1) {
      others.push(made);
      await setImmediate();
    }
  })();
  // Each takes four milliseconds by this clock.
  vi.spyOn(performance, 'now').mockImplementation(() => made * 4);
  const busy = (item: number): number => {
    made += 1;
    return item * 2;
  };
  const items = Array.from({ length: 20 }, (_, index) => index);
  expect(await mapInTurns(items, busy)).toEqual(items.map((item) => item * 2));
  await other;
  vi.restoreAllMocks();
  expect(others.some((seen) => seen > 0 && seen < items.length)).toBe(true);
});
