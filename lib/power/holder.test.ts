import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellKinds, cellResistanceOhm, cellVoltage } from './cell';
import {
  bayEnds,
  isReversed,
  otherEnd,
  seriesSource,
  underLoadV,
  voltsBetween,
  type Bay,
} from './holder';

const cell = fc.record({
  kind: fc.constantFrom(...cellKinds),
  left: fc.double({ min: 0, max: 1, noNaN: true }),
});
const bay = fc.record({
  springEnd: fc.constantFrom(...bayEnds),
  put: fc.record({ cell, plusEnd: fc.constantFrom(...bayEnds) }),
});
const bays = fc.array(bay, { minLength: 8, maxLength: 8 });
const temperatureC = fc.double({ min: -30, max: 40, noNaN: true });

const turned = (one: Bay): Bay => ({
  ...one,
  put: one.put && { ...one.put, plusEnd: otherEnd(one.put.plusEnd) },
});

describe('cells in series', () => {
  it('give the opposite voltage at the same resistance when every cell is turned round', () => {
    fc.assert(
      fc.property(bays, temperatureC, (filled, t) => {
        const one = seriesSource(filled, t);
        const other = seriesSource(filled.map(turned), t);
        expect(other?.openV).toBeCloseTo(-(one?.openV ?? NaN), 12);
        expect(other?.resistanceOhm).toBeCloseTo(one?.resistanceOhm ?? NaN, 12);
      }),
    );
  });

  it('do not care in which bay a cell sits', () => {
    fc.assert(
      fc.property(
        bays.chain((filled) =>
          fc.tuple(
            fc.constant(filled),
            fc.shuffledSubarray(filled, { minLength: 8, maxLength: 8 }),
          ),
        ),
        temperatureC,
        ([filled, shuffled], t) => {
          const one = seriesSource(filled, t);
          const other = seriesSource(shuffled, t);
          expect(other?.openV).toBeCloseTo(one?.openV ?? NaN, 12);
          expect(other?.resistanceOhm).toBeCloseTo(one?.resistanceOhm ?? NaN, 12);
        },
      ),
    );
  });

  it('are an open circuit with a single bay empty', () => {
    fc.assert(
      fc.property(bays, fc.nat(7), temperatureC, (filled, empty, t) => {
        const holed = filled.map((one, i) => (i === empty ? { ...one, put: null } : one));
        expect(seriesSource(holed, t)).toBeNull();
      }),
    );
  });

  it('never give more under a load than without one', () => {
    fc.assert(
      fc.property(
        bays,
        temperatureC,
        fc.double({ min: 0, max: 3, noNaN: true }),
        (filled, t, a) => {
          const source = seriesSource(filled, t);
          if (source === null) throw new Error('every bay is full');
          expect(underLoadV(source, a)).toBeLessThanOrEqual(source.openV);
        },
      ),
    );
  });
});

describe('the meter between two studs', () => {
  it('adds up from stud to stud, and reads the opposite with its probes exchanged', () => {
    const stud = fc.nat(8);
    fc.assert(
      fc.property(bays, stud, stud, stud, (filled, a, b, c) => {
        const volts = (red: number, black: number) => voltsBetween(filled, red, black) ?? NaN;
        expect(volts(a, b)).toBeCloseTo(-volts(b, a), 12);
        expect(volts(a, c)).toBeCloseTo(volts(a, b) + volts(b, c), 12);
      }),
    );
  });

  it('reads minus one cell across a cell that is the wrong way round', () => {
    fc.assert(
      fc.property(bays, fc.nat(7), (filled, at) => {
        const one = filled[at];
        if (one === undefined) throw new Error('there are eight');
        const volts = voltsBetween(filled, at + 1, at);
        expect(volts).toBeCloseTo(cellVoltage(one.put.cell) * (isReversed(one) ? -1 : 1), 12);
      }),
    );
  });
});

describe('a cell', () => {
  it('is the weaker the emptier and the colder it is', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...cellKinds),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: -30, max: 10, noNaN: true }),
        (kind, left, t) => {
          const fuller = { kind, left: left + 0.1 };
          expect(cellVoltage(fuller)).toBeGreaterThan(cellVoltage({ kind, left }));
          expect(cellResistanceOhm(fuller, t)).toBeLessThan(cellResistanceOhm({ kind, left }, t));
          expect(cellResistanceOhm(fuller, t + 10)).toBeLessThan(cellResistanceOhm(fuller, t));
        },
      ),
    );
  });
});
