import { describe, expect, it } from 'vitest';
import { loadKits } from '../content/sky-catalogue';
import { driftTimeSeconds } from './drift-time';
import {
  dawesLimitArcsec,
  exitPupilMm,
  highestUsefulMagnification,
  magnification,
} from './magnification';
import { trueFieldArcmin, trueFieldFromStopArcmin } from './true-field';

const kit = (id: string) => {
  const found = loadKits().find((one) => one.id === id);
  if (found === undefined) throw new Error(`no kit ${id}`);
  return found.telescope;
};
const eyepiece = (focalLengthMm: number) => ({ focalLengthMm, apparentFieldDeg: 50 });

// Worked by hand from F/f, D/m, apparent field over magnification and 116/D.
describe.each([
  ['wren', 25, 20, 150, 4, 1.45],
  ['wren', 9, 500 / 9, 54, 1.44, 1.45],
  ['heron', 25, 24, 125, 5, 0.9667],
  ['heron', 9, 600 / 9, 45, 1.8, 0.9667],
  ['owl', 25, 54.6, 54.945, 1.9231, 1.1048],
  ['owl', 9, 1365 / 9, 19.78, 0.6923, 1.1048],
])('%s with %i mm', (id, focalLengthMm, power, fieldArcmin, pupilMm, dawesArcsec) => {
  const telescope = kit(id);
  it('magnifies by F/f, shows so much sky and lets out so wide a bundle', () => {
    expect(magnification(telescope, eyepiece(focalLengthMm))).toBeCloseTo(power, 9);
    expect(trueFieldArcmin(telescope, eyepiece(focalLengthMm))).toBeCloseTo(fieldArcmin, 3);
    expect(exitPupilMm(telescope, eyepiece(focalLengthMm))).toBeCloseTo(pupilMm, 4);
    expect(dawesLimitArcsec(telescope)).toBeCloseTo(dawesArcsec, 4);
  });
});

it('an aperture of 80 mm bears about 160 times', () => {
  expect(highestUsefulMagnification(kit('wren'))).toBe(160);
});

it('a field stop of 21 mm shows 2.4063° at 500 mm, its 2 atan(stop / 2F)', () => {
  expect(trueFieldFromStopArcmin({ focalLengthMm: 500 }, 21) / 60).toBeCloseTo(2.4063, 3);
});

describe('a star left alone', () => {
  // 1 h / 15.041° at the equator; the round figures of observers' handbooks are 4 min a degree.
  it.each([
    [60, 0, 239.35],
    [150, 0, 598.36],
    [150, 60, 1196.73],
    [19.78, -45, 111.59],
  ])('crosses %f′ at declination %i° in %f s', (fieldArcmin, declinationDeg, seconds) => {
    expect(driftTimeSeconds(fieldArcmin, declinationDeg)).toBeCloseTo(seconds, 1);
  });

  it('stays for ever at the pole', () => {
    expect(driftTimeSeconds(60, 90)).toBe(Infinity);
    expect(driftTimeSeconds(60, -90)).toBe(Infinity);
  });
});
