import { expect, test } from 'vitest';
import { kappaReading, levelTable } from './sign-off-agreement';

// Landis and Koch, Biometrics 33 (1977) 159–174, the table of "strength of agreement".
test.each([
  [-0.01, 'poor'],
  [0, 'slight'],
  [0.2, 'slight'],
  [0.21, 'fair'],
  [0.4, 'fair'],
  [0.41, 'moderate'],
  [0.6, 'moderate'],
  [0.61, 'substantial'],
  [0.8, 'substantial'],
  [0.81, 'almost perfect'],
  [1, 'almost perfect'],
])('κ = %f is %s', (kappa, words) => {
  expect(kappaReading(kappa)).toBe(words);
});

test('the table has a row for each level of the one and a column for each of the other', () => {
  expect(
    levelTable([
      [1, 1],
      [3, 4],
      [3, 4],
      [4, 3],
    ] as const),
  ).toEqual([
    [1, 0, 0, 0],
    [0, 0, 0, 0],
    [0, 0, 0, 2],
    [0, 0, 1, 0],
  ]);
});
