import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coldShare, meanCurrentA, runTimeHours, usableCapacityAh } from './capacity';
import { cellKinds } from './cell';

const kind = fc.constantFrom(...cellKinds);
const current = fc.double({ min: 0.06, max: 2, noNaN: true });
const temperatureC = fc.double({ min: -40, max: 45, noNaN: true });
const fresh = { kind: 'alkaline', left: 1 } as const;

describe('usable capacity', () => {
  it('shrinks as more is drawn, and the hours with it', () => {
    fc.assert(
      fc.property(kind, current, (one, a) => {
        expect(usableCapacityAh(one, a * 1.2)).toBeLessThan(usableCapacityAh(one, a));
      }),
    );
  });

  it('is never more in the cold, and never below nothing', () => {
    fc.assert(
      fc.property(kind, temperatureC, (one, t) => {
        expect(coldShare(one, t)).toBeGreaterThan(0);
        expect(coldShare(one, t)).toBeLessThanOrEqual(coldShare(one, t + 5));
        expect(coldShare(one, t)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('halfway between two temperatures lies halfway between their shares', () => {
    expect(coldShare('alkaline', 5)).toBeCloseTo((0.6 + 0.85) / 2, 12);
    expect(coldShare('alkaline', 25)).toBe(1);
    expect(coldShare('alkaline', -40)).toBe(0.2);
  });
});

describe('run time of cells in series', () => {
  it('is that of one of them, however many there are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), current, temperatureC, (n, a, t) => {
        const night = { meanCurrentA: a, temperatureC: t };
        expect(runTimeHours({ ...night, cells: Array.from({ length: n }, () => fresh) })).toBe(
          runTimeHours({ ...night, cells: [fresh] }),
        );
      }),
    );
  });

  it('is decided by the emptiest cell', () => {
    const used = { ...fresh, left: 0.3 };
    const night = { meanCurrentA: 0.25, temperatureC: 20 };
    expect(runTimeHours({ ...night, cells: [fresh, used, fresh] })).toBeCloseTo(1.5, 12);
  });
});

it('a mean current lies between tracking and slewing', () => {
  // By hand: a tenth of the time 1.2 A, nine tenths 0.2 A: 0.12 + 0.18.
  expect(meanCurrentA({ trackingA: 0.2, slewingA: 1.2, slewingShare: 0.1 })).toBeCloseTo(0.3, 12);
});
