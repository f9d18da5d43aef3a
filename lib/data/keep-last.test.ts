import { expect, it, vi } from 'vitest';
import { keepLast } from './keep-last';

it('computes once for what is the same by its content', async () => {
  const compute = vi.fn(() => Promise.resolve({ minutes: 90 }));
  const kept = keepLast<{ minutes: number }>(2);
  expect(await kept({ place: [52, 0] }, compute)).toBe(await kept({ place: [52, 0] }, compute));
  expect(compute).toHaveBeenCalledTimes(1);
  await kept({ place: [53, 0] }, compute);
  expect(compute).toHaveBeenCalledTimes(2);
});

it('computes once for several who ask before it is done', async () => {
  const compute = vi.fn(() => Promise.resolve({ minutes: 90 }));
  const kept = keepLast<{ minutes: number }>(2);
  const [one, other] = await Promise.all([kept('x', compute), kept('x', compute)]);
  expect(one).toBe(other);
  expect(compute).toHaveBeenCalledTimes(1);
});

it('lets go what was longest unasked for', async () => {
  const computed: string[] = [];
  const kept = keepLast<{ name: string }>(2);
  const ask = (name: string) =>
    kept(name, () => {
      computed.push(name);
      return Promise.resolve({ name });
    });
  for (const name of ['a', 'b', 'a', 'c', 'a', 'b']) expect(await ask(name)).toEqual({ name });
  expect(computed).toEqual(['a', 'b', 'c', 'b']);
});

it('keeps nothing of a computation that fails', async () => {
  const kept = keepLast<{ good: true }>(2);
  await expect(kept('x', () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await kept('x', () => Promise.resolve({ good: true }))).toEqual({ good: true });
});
