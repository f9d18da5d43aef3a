import { expect, it } from 'vitest';
import { mayMakeRound } from './throttle';

it('a network may ask for rounds as a class does, not as a flood; others are not held up', async () => {
  for (let round = 1; round <= 400; round += 1) expect(await mayMakeRound('10.0.0.1')).toBe(true);
  expect(await mayMakeRound('10.0.0.1')).toBe(false);
  expect(await mayMakeRound('10.0.0.2')).toBe(true);
  expect(await mayMakeRound(null)).toBe(true);
});
