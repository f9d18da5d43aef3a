import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aboutX, aboutZ, identity, multiply } from '@/lib/units/matrix';
import { landingInWords, seenInWords } from './landing-words';
import { pictureHeight, pictureWidth, scaleFor } from './landing-scale';
import { outcomeFigures, outcomeInWords } from './outcome-words';

const landing = (rightDeg: number, upDeg: number) => ({ hip: 1, name: 'Vega', rightDeg, upDeg });

test('a landing is told in degrees or arcminutes, right or left, high or low', () => {
  expect(landingInWords(landing(15.04, -2.1))).toBe(
    '15.0° too far right along the horizon, 2.1° too low',
  );
  expect(landingInWords(landing(-0.2, 0.05))).toBe(
    '12′ too far left along the horizon, 3′ too high',
  );
  expect(landingInWords(landing(0, -1.5))).toBe('1.5° too low');
  // One unit in a line; what is nothing beside the rest goes unsaid.
  expect(landingInWords(landing(-8.2, 0.5))).toBe(
    '8.2° too far left along the horizon, 0.5° too high',
  );
  expect(landingInWords(landing(-8.2, 0.03))).toBe('8.2° too far left along the horizon');
  expect(landingInWords(landing(0.005, -0.005))).toBe('right on the star');
});

test('a star is in the eyepiece up to the edge of its field and not beyond', () => {
  expect(seenInWords(landing(0.3, 0.4), 30)).toMatch(/is in the eyepiece/);
  expect(seenInWords(landing(0.3, 0.41), 30)).toMatch(/not in the eyepiece/);
});

test('a slew that ends across the sky says so', () => {
  expect(seenInWords(landing(-20.4, 123.4), 27)).toBe(
    'That is quite another part of the sky: 125° from the star.',
  );
});

test('whatever the miss, star and tube lie in the picture, and the miss is not lost in its middle', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -170, max: 170, noNaN: true }),
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: 8, max: 60, noNaN: true }),
      (rightDeg, upDeg, fieldRadiusArcmin) => {
        const { pxPerDeg, stepDeg } = scaleFor([{ rightDeg, upDeg }], fieldRadiusArcmin);
        expect(Math.abs(rightDeg) * pxPerDeg).toBeLessThan(pictureWidth / 2);
        expect(Math.abs(upDeg) * pxPerDeg).toBeLessThan(pictureHeight / 2);
        expect(stepDeg * pxPerDeg).toBeGreaterThan(12);
        // On the next closer scale it would not have fitted; no two neighbours differ by more than 2.5.
        const needs = Math.max(Math.abs(rightDeg), Math.abs(upDeg), fieldRadiusArcmin / 60);
        if (needs > 0.25) expect(needs * pxPerDeg).toBeGreaterThan(25);
      },
    ),
  );
});

test('the mount says how well the two agree, in its own words', () => {
  expect(
    outcomeInWords({
      kind: 'agree',
      model: { base: identity, altitudeZeroDeg: 0 },
      mismatchArcmin: 4.2,
      baseTiltDeg: 0,
    }),
  ).toBe('These two agree to 4′.');
  expect(outcomeInWords({ kind: 'disagree', mismatchArcmin: 192 })).toBe(
    'These two disagree by 3.2°.',
  );
  expect(outcomeInWords({ kind: 'base-on-its-side', baseTiltDeg: 74, mismatchArcmin: 1 })).toBe(
    'The base would lie on its side: are the two stars swapped?',
  );
});

test('a mount set 8° to the right of north says so, however it leans', () => {
  // Azimuth reads 8° too little all round: its frame is turned by 8° with the azimuth, and then leans.
  const turned = aboutZ(8);
  for (const base of [turned, multiply(aboutX(0.001), turned)]) {
    const figures = outcomeFigures(
      {
        kind: 'agree',
        model: { base, altitudeZeroDeg: -0.5 },
        mismatchArcmin: 1,
        baseTiltDeg: 0.001,
      },
      true,
    );
    expect(figures.map(({ value }) => value)).toContain('8.0° to the right');
    expect(figures.map(({ value }) => value)).toContain('30′ too much');
  }
});

test('a computer that takes the zero as given tells none', () => {
  const outcome = {
    kind: 'agree',
    model: { base: identity, altitudeZeroDeg: 0 },
    mismatchArcmin: 1,
    baseTiltDeg: 0,
  } as const;
  const names = (solvesForZero: boolean) =>
    outcomeFigures(outcome, solvesForZero).map(({ name }) => name);
  expect(names(true)).toContain('The altitude reads');
  expect(names(false)).not.toContain('The altitude reads');
});
