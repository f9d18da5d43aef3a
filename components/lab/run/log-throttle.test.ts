import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LogThrottle } from './log-throttle';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('a busy hand is saved every three seconds, the latest each time', () => {
  const pass = vi.fn<(log: number) => void>();
  const throttle = new LogThrottle(pass);
  for (let tenth = 1; tenth <= 100; tenth += 1) {
    throttle.push(tenth);
    vi.advanceTimersByTime(100);
  }
  expect(pass.mock.calls.length).toBe(3);
  vi.advanceTimersByTime(3000);
  expect(pass).toHaveBeenLastCalledWith(100);
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
