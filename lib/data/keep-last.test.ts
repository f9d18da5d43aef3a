import { expect, it, vi } from 'vitest';
import { keepLast } from './keep-last';

it('computes once for what is the same by its content', () => {
  const compute = vi.fn(() => ({ minutes: 90 }));
  const kept = keepLast<{ minutes: number }>(2);
  expect(kept({ place: [52, 0] }, compute)).toBe(kept({ place: [52, 0] }, compute));
  expect(compute).toHaveBeenCalledTimes(1);
  kept({ place: [53, 0] }, compute);
  expect(compute).toHaveBeenCalledTimes(2);
});

it('lets go what was longest unasked for', () => {
  const computed: string[] = [];
  const kept = keepLast<{ name: string }>(2);
  const ask = (name: string) =>
    kept(name, () => {
      computed.push(name);
      return { name };
    });
  for (const name of ['a', 'b', 'a', 'c', 'a', 'b']) expect(ask(name)).toEqual({ name });
  expect(computed).toEqual(['a', 'b', 'c', 'b']);
});

it('keeps nothing of a computation that fails', () => {
  const kept = keepLast<{ good: true }>(2);
  expect(() =>
    kept('x', () => {
      throw new Error('no');
    }),
  ).toThrow('no');
  expect(kept('x', () => ({ good: true }))).toEqual({ good: true });
});
