import { expect, it } from 'vitest';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { blurArcmin } from './focus';
import { apparentSeparationArcmin, showsWhole, splits } from './shows';
import { skyTargets } from './sky-targets';

/** Hipparcos numbers of the doubles that the star catalogue names. */
const hipOf: Readonly<Record<string, number>> = {
  albireo: 95947,
  mizar: 65378,
  almach: 9640,
  'cor-caroli': 63125,
  algedi: 100064,
  acrux: 60718,
  izar: 72105,
  'eta-orionis': 25281,
};

it('the doubles stand where the Hipparcos catalogue has them', () => {
  const { stars } = loadCatalogue();
  for (const [id, hip] of Object.entries(hipOf)) {
    const target = skyTargets.find((one) => one.id === id);
    const star = stars.find((one) => one.hip === hip);
    expect(star, id).toBeDefined();
    expect(Math.abs((target?.declinationDeg ?? 0) - (star?.decDeg ?? 99)), id).toBeLessThan(0.06);
    expect(Math.abs((target?.rightAscensionDeg ?? 0) - (star?.raDeg ?? 999)), id).toBeLessThan(
      0.06,
    );
  }
});

/** Stars of Hipparcos in a cluster or beside it, by HIP number, and within how many degrees of its middle. */
const neighbours: readonly (readonly [string, number, number])[] = [
  // Alcyone in the Pleiades; Asellus Borealis and Australis either side of the Beehive.
  ['pleiades', 17702, 0.5],
  ['beehive', 42806, 2.5],
  ['beehive', 42911, 2.5],
  // Propus beside M 35; Zeta and Eta Herculis around M 13; Lambda Sagittarii beside M 22.
  ['m35', 28734, 3],
  ['m13', 81833, 3],
  ['m22', 90496, 3],
  // Shaula beside M 7, Sirius above M 41, Mimosa beside the Jewel Box.
  ['m7', 85927, 5],
  ['m41', 32349, 4.5],
  ['jewel-box', 62434, 1.5],
];

it('the clusters stand beside the stars of Hipparcos by which they are found', () => {
  const { stars } = loadCatalogue();
  for (const [id, hip, withinDeg] of neighbours) {
    const target = skyTargets.find((one) => one.id === id);
    const star = stars.find((one) => one.hip === hip);
    if (target === undefined || star === undefined) throw new Error(`${id} or ${String(hip)}`);
    const apart = separationDeg(
      directionFromAzAlt(target.rightAscensionDeg, target.declinationDeg),
      directionFromAzAlt(star.raDeg, star.decDeg),
    );
    expect(apart, `${id} from ${star.name ?? String(hip)}`).toBeLessThan(withinDeg);
  }
});

it('no two things to look at share a name', () => {
  expect(new Set(skyTargets.map(({ name }) => name)).size).toBe(skyTargets.length);
});

// 1 mm out at f/6.25 is a cone of 0.16 mm; from 500 mm away that is 0.16/500 rad = 1.1001′.
it('one millimetre out of focus makes a disc of 1.1′ on an 80 mm f/6.25', () => {
  expect(blurArcmin({ focalLengthMm: 500, apertureMm: 80 }, 1)).toBeCloseTo(1.1001, 3);
  expect(blurArcmin({ focalLengthMm: 500, apertureMm: 80 }, -1)).toBeCloseTo(1.1001, 3);
});

const wren = { focalLengthMm: 500, apertureMm: 80 };
const lens = (focalLengthMm: number) => ({ focalLengthMm, apparentFieldDeg: 50 });

// Worked by hand: 25 mm on 500 mm is 20 times and 2.5° of sky; 9 mm is 55.6 times and 54′.
it('shows the Pleiades whole at 20 times and not at 56', () => {
  expect(showsWhole(wren, lens(25), 110)).toBe(true);
  expect(showsWhole(wren, lens(9), 110)).toBe(false);
});

it('a pair of 14.4″ seems 4.8′ apart at 20 times: two stars; one of 9.6″ only 3.2′', () => {
  expect(apparentSeparationArcmin(wren, lens(25), 14.4)).toBeCloseTo(4.8, 9);
  expect(splits(wren, lens(25), 14.4)).toBe(true);
  expect(splits(wren, lens(25), 9.6)).toBe(false);
  expect(splits(wren, lens(9), 9.6)).toBe(true);
});

// Dawes: 116/80 = 1.45″; and 2 × 80 = 160 times is the most it bears.
it('no eyepiece splits what the aperture does not, nor beyond what it bears', () => {
  expect(splits(wren, lens(4), 1.4)).toBe(false);
  expect(splits(wren, lens(4), 2)).toBe(true);
  expect(splits(wren, lens(3), 2)).toBe(false);
});
