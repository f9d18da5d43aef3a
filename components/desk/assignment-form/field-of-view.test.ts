import { expect, it } from 'vitest';
import { fieldOfView, fieldOfViewText } from './field-of-view';

it('a 500 mm telescope with a 9 mm eyepiece of 50° magnifies 55.6 times and shows 0.9°', () => {
  const view = fieldOfView({
    telescopeFocalLengthMm: 500,
    apertureMm: 80,
    eyepieceFocalLengthMm: 9,
    apparentFieldDeg: 50,
  });
  expect(view?.magnification).toBeCloseTo(55.556, 3);
  expect(view?.trueFieldDeg).toBeCloseTo(0.9, 9);
  expect(view?.exitPupilMm).toBeCloseTo(1.44, 9);
  expect(view && fieldOfViewText(view)).toBe(
    '55.6×, true field 0.90° (54′ across), exit pupil 1.4 mm',
  );
});

it('says nothing while a number is missing', () => {
  expect(
    fieldOfView({
      telescopeFocalLengthMm: Number.NaN,
      apertureMm: 80,
      eyepieceFocalLengthMm: 9,
      apparentFieldDeg: 50,
    }),
  ).toBeNull();
});
