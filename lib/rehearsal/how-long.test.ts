import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { howLongItLasts, type EveningSupply } from './how-long';

/** Eight cells of 1.5 V and 0.2 Ω each; 15 h at 100 mA (IEC 60086-2, LR6, from memory). */
const eightCells: EveningSupply = { openV: 12, resistanceOhm: 1.6, usableAh: 1.5 };
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
    // Ohm's law: 12 V less 1 A through 1.6 Ω.
    const { slewVolts } = howLongItLasts(eightCells, drain, [{ atMinutes: 5, minutes: 1 }]);
    expect(slewVolts[0]).toBeCloseTo(10.4, 9);
  });
});

describe('the slew at which the computer resets', () => {
  /** A slew of half a minute every half an hour. */
  const slews = Array.from({ length: 40 }, (_, i) => ({ atMinutes: 30 * i, minutes: 0.5 }));

  it('is the first where the load is too much from the start', () => {
    const cold = { ...eightCells, resistanceOhm: 4.1 };
    expect(howLongItLasts(cold, drain, slews).resetsAtSlew).toBe(1);
  });

  it('is the one by which all has been taken', () => {
    const { resetsAtSlew, slewVolts } = howLongItLasts(eightCells, drain, slews);
    // Each half hour 0.05 Ah of tracking, and 0.0075 Ah more by its slew: 1.5 Ah are gone in the 27th.
    expect(resetsAtSlew).toBe(27);
    expect(slewVolts[25]).toBeCloseTo(10.4, 9);
    expect(slewVolts[26]).toBe(0);
  });

  it('is none of a pack that gives the peak and of which no end is known', () => {
    const pack = { openV: 12, resistanceOhm: 0, usableAh: Infinity };
    expect(howLongItLasts(pack, drain, slews)).toMatchObject({
      hours: Infinity,
      resetsAtSlew: null,
    });
  });

  it('never comes later in a weaker supply', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), (usableAh) => {
        const slewOf = (ah: number): number =>
          howLongItLasts({ ...eightCells, usableAh: ah }, drain, slews).resetsAtSlew ?? Infinity;
        expect(slewOf(usableAh)).toBeLessThanOrEqual(slewOf(usableAh * 1.1));
      }),
    );
  });
});
