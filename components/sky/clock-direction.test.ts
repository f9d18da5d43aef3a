import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clockHour, fieldPlaceInWords, tenthsOut } from './clock-direction';

test.each([
  [0, 1, 12],
  [1, 1.2, 1],
  [1, 0, 3],
  [0, -1, 6],
  [-1, 0, 9],
  [-0.05, 1, 12],
  [-1, 1.2, 11],
])('%d to the right and %d up is towards %d o’clock', (rightArcmin, upArcmin, hour) => {
  expect(clockHour({ rightArcmin, upArcmin })).toBe(hour);
});

test('the hand is never more than a quarter of an hour of arc, 15°, from where the light is', () => {
  fc.assert(
    fc.property(fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (angle) => {
      const hour = clockHour({ rightArcmin: Math.sin(angle), upArcmin: Math.cos(angle) });
      const apart = angle - (hour / 12) * 2 * Math.PI;
      const degrees = (Math.acos(Math.cos(apart)) * 180) / Math.PI;
      return hour >= 1 && hour <= 12 && degrees <= 15 + 1e-6;
    }),
  );
});

test('the field is told in tenths of its radius', () => {
  expect(tenthsOut({ rightArcmin: 3, upArcmin: 4 }, 10)).toBe(5);
  expect(fieldPlaceInWords({ rightArcmin: 0.3, upArcmin: 0 }, 10)).toBe('in the middle');
  expect(fieldPlaceInWords({ rightArcmin: 3, upArcmin: 0 }, 10)).toBe(
    'towards 3 o’clock, 3 tenths of the way out',
  );
  expect(fieldPlaceInWords({ rightArcmin: 0, upArcmin: -1 }, 10)).toBe(
    'towards 6 o’clock, one tenth of the way out',
  );
  expect(fieldPlaceInWords({ rightArcmin: 0, upArcmin: 9.9 }, 10)).toBe(
    'towards 12 o’clock, at the edge',
  );
});
