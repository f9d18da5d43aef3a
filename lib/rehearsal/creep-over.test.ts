import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { creepOver } from './creep-over';

/** 3 kg a centimetre forward of the axis: 0.294 N m level (3 · 9.80665 · 0.01, by hand). */
const tube = { massKg: 3, forwardMm: 10, aboveMm: 0 };
const weighsNm = 0.294_199_5;

describe('how far a tube creeps', () => {
  it('is nothing where the clutch holds', () => {
    const asked = { tube, holdingTorqueNm: 0.3, altitudeDeg: 0, minutes: 60 };
    expect(creepOver(asked)).toBe(0);
  });

  it('is half a degree a minute, front down, at twice what the clutch holds', () => {
    const asked = { tube, holdingTorqueNm: weighsNm / 2, altitudeDeg: 0, minutes: 2 };
    expect(creepOver(asked)).toBeCloseTo(-1, 6);
  });

  it('is front up where the back is the heavier end', () => {
    const asked = {
      tube: { ...tube, forwardMm: -10 },
      holdingTorqueNm: weighsNm / 2,
      altitudeDeg: 0,
      minutes: 2,
    };
    expect(creepOver(asked)).toBeCloseTo(1, 6);
  });

  it('is less high up, where the weight has a shorter arm, and ends where the clutch holds', () => {
    // cos 60° is a half: pulled with what it holds, and no more.
    const at = (altitudeDeg: number, minutes: number) =>
      creepOver({ tube, holdingTorqueNm: weighsNm * 0.5, altitudeDeg, minutes });
    expect(at(61, 60)).toBe(0);
    expect(Math.abs(at(50, 1))).toBeLessThan(Math.abs(at(10, 1)));
    // Back heavy it climbs from 50° to 60°, and stays there.
    const climbs = creepOver({
      tube: { ...tube, forwardMm: -10 },
      holdingTorqueNm: weighsNm * 0.5,
      altitudeDeg: 50,
      minutes: 10_000,
    });
    expect(climbs).toBeCloseTo(10, 6);
  });

  it('never shrinks with the minutes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (altitudeDeg, minutes) => {
          const over = (during: number): number =>
            Math.abs(creepOver({ tube, holdingTorqueNm: 0.1, altitudeDeg, minutes: during }));
          expect(over(minutes + 1)).toBeGreaterThanOrEqual(over(minutes));
        },
      ),
    );
  });
});
