/**
 * Cells, series circuits and how long cells last, against named values from outside the code.
 */
import { describe, expect, it } from 'vitest';
import { runTimeHours, usableCapacityAh } from '../../lib/power/capacity';
import { seriesSource, underLoadV, type Bay } from '../../lib/power/holder';

const eight = (reversed = 0): Bay[] =>
  Array.from({ length: 8 }, (_, i) => ({
    springEnd: 'bottom',
    put: { cell: { kind: 'alkaline', left: 1 }, plusEnd: i < reversed ? 'bottom' : 'top' },
  }));

describe('cells in series (Kirchhoff’s second law; the nominal 1.5 V of an LR6 is IEC 60086-2’s)', () => {
  it('eight cells of 1.5 V make 12 V', () => {
    expect(seriesSource(eight(), 20)?.openV).toBe(12);
  });

  it.each([
    [1, 9],
    [2, 6],
    [3, 3],
    [4, 0],
    [5, -3],
    [8, -12],
  ])('with %i of them the wrong way round (8 − 2k) × 1.5 V is %i V', (reversed, volts) => {
    expect(seriesSource(eight(reversed), 20)?.openV).toBeCloseTo(volts, 12);
  });
});

it('a battery of 12.0 V and 0.5 ohm that feeds 10 A has 7.0 V at its terminals (Ohm’s law)', () => {
  expect(underLoadV({ openV: 12, resistanceOhm: 0.5 }, 10)).toBe(7);
});

describe('an LR6 cell (IEC 60086-2, minimum average durations to 0.9 V at 1 h a day; from memory)', () => {
  const cells = [{ kind: 'alkaline', left: 1 } as const];

  it.each([
    [250, 5],
    [100, 15],
  ])('feeds %i mA for %i h', (milliamperes, hours) => {
    const night = { cells, meanCurrentA: milliamperes / 1000, temperatureC: 20 };
    expect(runTimeHours(night)).toBeCloseTo(hours, 9);
  });

  it('gives 1.25 Ah at 250 mA and 1.5 Ah at 100 mA', () => {
    expect(usableCapacityAh('alkaline', 0.25)).toBeCloseTo(1.25, 9);
    expect(usableCapacityAh('alkaline', 0.1)).toBeCloseTo(1.5, 9);
  });
});

it('a rechargeable cell rated 2 Ah gives it in five hours (IEC 61951-2, rated at the five-hour rate; from memory)', () => {
  const cells = [{ kind: 'nickel-metal-hydride', left: 1 } as const];
  expect(runTimeHours({ cells, meanCurrentA: 0.4, temperatureC: 20 })).toBeCloseTo(5, 9);
});

it('doubling the current at an exponent of 1.2 leaves 2^−1.2 of the hours (Peukert 1897; from memory)', () => {
  const cells = [{ kind: 'alkaline', left: 1 } as const];
  const hours = (a: number) => runTimeHours({ cells, meanCurrentA: a, temperatureC: 20 });
  // The exponent that joins the two values of the standard is 1.199.
  expect(hours(0.5) / hours(0.25)).toBeCloseTo(2 ** -1.2, 2);
});
