import { expect, it } from 'vitest';
import { headingOnDisc } from './all-sky';
import { litPartOfMoon } from './moon-phase';

it('a half Moon ends in a straight line, a full Moon is a whole disc', () => {
  expect(litPartOfMoon(0.5, 8)).toContain('A0.00 8');
  expect(litPartOfMoon(1, 8)).toBe('M0 -8 A8 8 0 0 1 0 8 A8.00 8 0 0 1 0 -8 Z');
});

it('a crescent bulges the way its limb does, a gibbous Moon the other way', () => {
  expect(litPartOfMoon(0.1, 10)).toBe('M0 -10 A10 10 0 0 1 0 10 A8.00 10 0 0 0 0 -10 Z');
  expect(litPartOfMoon(0.9, 10)).toBe('M0 -10 A10 10 0 0 1 0 10 A8.00 10 0 0 1 0 -10 Z');
});

it('east is on the left of the disc, south below', () => {
  const zenith = { azimuthDeg: 0, altitudeDeg: 89.99 };
  expect(Math.abs(headingOnDisc(zenith, { azimuthDeg: 90, altitudeDeg: 0 }, 200))).toBeCloseTo(
    180,
    0,
  );
  expect(headingOnDisc(zenith, { azimuthDeg: 180, altitudeDeg: 0 }, 200)).toBeCloseTo(90, 0);
});

it('a Sun that has set below the Moon lights its side towards the rim', () => {
  const moon = { azimuthDeg: 270, altitudeDeg: 20 };
  // West is on the right: the way down leads to the right.
  expect(headingOnDisc(moon, { azimuthDeg: 270, altitudeDeg: -10 }, 200)).toBeCloseTo(0, 1);
});
