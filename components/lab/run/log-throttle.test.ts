import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LogThrottle } from './log-throttle';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('a busy hand is saved every three seconds, the latest each time', () => {
  const pass = vi.fn<(log: readonly number[]) => void>();
  const throttle = new LogThrottle(pass);
  for (let tenth = 1; tenth <= 100; tenth += 1) {
    throttle.push([tenth]);
    vi.advanceTimersByTime(100);
  }
  expect(pass.mock.calls.length).toBe(3);
  vi.advanceTimersByTime(3000);
  expect(pass).toHaveBeenLastCalledWith([100]);
});

test('a log of two thousand actions is saved every half minute', () => {
  const pass = vi.fn<(log: readonly number[]) => void>();
  const throttle = new LogThrottle(pass);
  throttle.push(Array.from({ length: 2000 }, (_, index) => index));
  vi.advanceTimersByTime(29_000);
  expect(pass).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1000);
  expect(pass).toHaveBeenCalledTimes(1);
});

test('leaving the page saves at once, and nothing twice', () => {
  const pass = vi.fn<(log: string) => void>();
  const throttle = new LogThrottle(pass);
  throttle.push('a');
  throttle.flush();
  throttle.flush();
  vi.advanceTimersByTime(9000);
  expect(pass.mock.calls).toEqual([['a']]);
});

test('once the run is sent, nothing is saved over it', () => {
  const pass = vi.fn<(log: string) => void>();
  const throttle = new LogThrottle(pass);
  throttle.push('a');
  throttle.drop();
  vi.advanceTimersByTime(9000);
  expect(pass).not.toHaveBeenCalled();
});
