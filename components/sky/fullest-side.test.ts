import { expect, test } from 'vitest';
import { fullestSideDeg } from './fullest-side';

const light = (azimuthDeg: number, altitudeDeg: number, seenAs = 1) => ({
  azimuthDeg,
  altitudeDeg,
  seenAs,
});

test('faces the side with most bright lights, also across north', () => {
  expect(fullestSideDeg([light(90, 30), light(210, 30), light(240, 40)])).toBe(225);
  expect(fullestSideDeg([light(340, 30), light(20, 30), light(180, 30)])).toBe(0);
});

test('what is faint, low or overhead does not count', () => {
  const faint = [light(90, 30, 2.5), light(91, 30, 3), light(92, 30, 4)];
  const low = [light(135, 14), light(136, 5)];
  const high = [light(0, 61), light(1, 80)];
  expect(fullestSideDeg([...faint, ...low, ...high, light(270, 20)])).toBe(270);
});

test('the order of the lights changes nothing, and no light gives north', () => {
  const lights = [light(100, 20), light(120, 50), light(300, 30), light(310, 30)];
  expect(fullestSideDeg(lights.toReversed())).toBe(fullestSideDeg(lights));
  expect(fullestSideDeg([])).toBe(0);
});
