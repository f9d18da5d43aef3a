/**
 * Worked examples of a first-year text, OpenStax *University Physics*, volume 1, chapter 12 ("The torque
 * balance": given values and answers from memory, worked again by hand; g = 9.8 m/s² there), and the
 * arithmetic of the design, "Balance", worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { balanceShiftMm, togetherAsOne } from '../../lib/balance/centre-of-mass';
import { clampedAt, freeFallMPerS2, torqueNm } from '../../lib/balance/torque';

describe('the torque balance: a uniform metre stick of 150 g on a fulcrum at its 70 cm mark', () => {
  // 50 g at the zero end, 75 g at 30 cm, the stick's own weight at 50 cm; what hangs at the 100 cm end?
  const given = [
    { massKg: 0.05, alongMm: 0, aboveAxisMm: 0 },
    { massKg: 0.075, alongMm: 300, aboveAxisMm: 0 },
    { massKg: 0.15, alongMm: 500, aboveAxisMm: 0 },
  ];
  const level = (hungKg: number) =>
    torqueNm(
      clampedAt(togetherAsOne([...given, { massKg: hungKg, alongMm: 1000, aboveAxisMm: 0 }]), 700),
      0,
    );

  it('balances with the 317 g of the book (316.7 g, three significant figures)', () => {
    expect(level(0.95 / 3)).toBeCloseTo(0, 12);
    expect(level(0.3162)).toBeGreaterThan(0);
    expect(level(0.3172)).toBeLessThan(0);
  });

  it('rests on the fulcrum with the 5.8 N of the book', () => {
    const { massKg } = togetherAsOne([...given, { massKg: 0.317, alongMm: 1000, aboveAxisMm: 0 }]);
    expect(massKg * 9.8).toBeCloseTo(5.8, 1);
  });
});

it('a car with 52 % of its weight on the front of 2.5 m between the axles has its centre 1.3 m from the rear one', () => {
  const centre = togetherAsOne([
    { massKg: 0.52, alongMm: 0, aboveAxisMm: 0 },
    { massKg: 0.48, alongMm: 2500, aboveAxisMm: 0 },
  ]);
  expect(2500 - centre.alongMm).toBeCloseTo(1300, 9);
});

it('standard free fall is the 9.80665 m/s² of the 3rd CGPM, 1901', () => {
  expect(freeFallMPerS2).toBe(9.80665);
});

describe('a tube of 2 kg, worked by hand', () => {
  // 2 × 9.80665 × 0.025 = 0.4903325; × cos 60° = 0.24517; 2 × 9.80665 × 0.01 × sin 60° = 0.16986.
  it.each([
    [25, 0, 0, 0.4903325],
    [25, 0, 60, 0.245166],
    [25, 10, 60, 0.245166 - 0.169856],
    [0, 10, 90, -0.196133],
    [-25, 0, 0, -0.4903325],
  ])(
    '%i mm ahead and %i mm above, at %i°, pulls with %f N m',
    (forwardMm, aboveMm, deg, torque) => {
      expect(torqueNm({ massKg: 2, forwardMm, aboveMm }, deg)).toBeCloseTo(torque, 6);
    },
  );

  it('balances 50 mm farther back with 0.5 kg put on 250 mm behind its balance point', () => {
    const tube = { massKg: 2, alongMm: 230, aboveAxisMm: 0 };
    expect(balanceShiftMm(tube, { massKg: 0.5, alongMm: 480 })).toBe(50);
  });
});
