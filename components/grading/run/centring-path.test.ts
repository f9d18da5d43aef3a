import { expect, test } from 'vitest';
import { centringSteps } from './centring-path';

const star = (azimuthDeg: number, altitudeDeg: number) => ({
  hip: 91262,
  name: 'Vega',
  azimuthDeg,
  altitudeDeg,
});
const steady = { latitudeDeg: 90, refractionScale: 0 };

test('a tube to the right of and above the star has the star to its left and below', () => {
  // At the equator of azimuth and altitude a degree of either is a degree of sky.
  const [step] = centringSteps(
    [{ atMs: 0, azimuthDeg: 91, altitudeDeg: 0.5 }],
    star(90, 0),
    steady,
  );
  expect(step?.tubeBesideStar.rightArcmin).toBeCloseTo(60, 1);
  expect(step?.tubeBesideStar.upArcmin).toBeCloseTo(30, 1);
  expect(step?.starBesideTube.rightArcmin).toBeCloseTo(-60, 1);
  expect(step?.starBesideTube.upArcmin).toBeCloseTo(-30, 0);
  expect(step?.awayArcmin).toBeCloseTo(67.1, 1);
});

test('the star is followed back along the turn of the sky: at a pole 15.04″ of azimuth a second', () => {
  // Seen from the North Pole the sky goes round clockwise, to the right (azimuth grows).
  const path = [0, 60_000].map((atMs) => ({ atMs, azimuthDeg: 180, altitudeDeg: 0 }));
  const [before, atConfirm] = centringSteps(path, star(180, 0), steady);
  expect(atConfirm?.awayArcmin).toBeCloseTo(0, 6);
  expect(before?.secondsBefore).toBe(60);
  // 15.041″ · 60 s = 15.04′ (design, "Field").
  expect(before?.awayArcmin).toBeCloseTo(15.041, 2);
  expect(before?.starBesideTube.rightArcmin).toBeCloseTo(-15.041, 2);
});

test('a tube that looks the other way is as far from the star as the sky has it', () => {
  const [step] = centringSteps(
    [{ atMs: 0, azimuthDeg: 270, altitudeDeg: 10 }],
    star(90, 10),
    steady,
  );
  // Over the zenith: 80° up to it and 80° down again.
  expect(step?.awayArcmin).toBeCloseTo(160 * 60, 3);
  expect(step?.tubeBesideStar.upArcmin).toBeCloseTo(160 * 60, 3);
  expect(step?.tubeBesideStar.rightArcmin).toBeCloseTo(0, 3);
});

test('no path, no steps', () => {
  expect(centringSteps([], star(90, 10), steady)).toEqual([]);
});
