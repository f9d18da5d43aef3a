import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { howLongItLasts, type EveningSupply } from './how-long';

/** Eight cells of 1.5 V and 0.2 Ω each; 15 h at 100 mA (IEC 60086-2, LR6, from memory). */
const eightCells: EveningSupply = {
  atFirst: { openV: 12, resistanceOhm: 1.6 },
  atLast: { openV: 8.8, resistanceOhm: 4.8 },
  usableAh: 1.5,
};
const drain = { trackingA: 0.1, slewingA: 1, resetBelowV: 8 };

describe('how long a supply lasts', () => {
  it('is its charge over the current where nothing slews', () => {
    expect(howLongItLasts(eightCells, drain, [])).toEqual({
      hours: 15,
      slewVolts: [],
      resetsAtSlew: null,
    });
  });

  it('is less by what the slews take beside', () => {
    // Ten minutes at 0.9 A more: 0.15 Ah, an hour and a half of tracking.
    const { hours } = howLongItLasts(eightCells, drain, [{ atMinutes: 5, minutes: 10 }]);
    expect(hours).toBeCloseTo(13.5, 9);
  });

  it('takes I·R off the volts while it slews', () => {
    // Ohm's law: hardly anything drawn yet, 12 V less 1 A through 1.6 Ω.
    const { slewVolts } = howLongItLasts(eightCells, drain, [{ atMinutes: 0, minutes: 1e-6 }]);
    expect(slewVolts[0]).toBeCloseTo(10.4, 6);
  });
});

describe('the slew at which the computer resets', () => {
  /** A slew of half a minute every half an hour. */
  const slews = Array.from({ length: 40 }, (_, i) => ({ atMinutes: 30 * i, minutes: 0.5 }));

  it('is the first of which the volts fall below what it needs', () => {
    const { slewVolts, resetsAtSlew } = howLongItLasts(eightCells, drain, slews);
    if (resetsAtSlew === null) throw new Error('nothing reset');
    // 10.4 V at first and 4 V at last, straight: 8 V at three eighths of 15 h.
    expect((resetsAtSlew - 1) * 30).toBeGreaterThan(0.8 * (3 / 8) * 15 * 60);
    expect((resetsAtSlew - 1) * 30).toBeLessThanOrEqual((3 / 8) * 15 * 60);
    expect(slewVolts.findIndex((volts) => volts < 8)).toBe(resetsAtSlew - 1);
  });

  it('is none while the supply holds, as a pack does that gives the peak', () => {
    const pack = { openV: 12, resistanceOhm: 0 };
    const supply = { atFirst: pack, atLast: pack, usableAh: 20 };
    expect(howLongItLasts(supply, drain, slews).resetsAtSlew).toBeNull();
  });

  it('is one after all has been taken, whatever the volts were', () => {
    const pack = { openV: 12, resistanceOhm: 0 };
    const supply = { atFirst: pack, atLast: pack, usableAh: 0.5 };
    const late = [{ atMinutes: 301, minutes: 0.1 }];
    expect(howLongItLasts(supply, drain, late)).toMatchObject({ slewVolts: [0], resetsAtSlew: 1 });
  });

  it('never comes later in a weaker supply', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), (share) => {
        const slewOf = (usableAh: number): number =>
          howLongItLasts({ ...eightCells, usableAh }, drain, slews).resetsAtSlew ?? Infinity;
        expect(slewOf(share)).toBeLessThanOrEqual(slewOf(share * 1.1));
      }),
    );
  });
});
