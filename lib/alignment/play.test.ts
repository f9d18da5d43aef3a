import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lagAfter } from './play';

const approach = fc.constantFrom(1 as const, -1 as const);
const play = fc.double({ min: 0, max: 20, noNaN: true });
const move = fc.double({ min: -50, max: 50, noNaN: true });

describe('play between motor and tube', () => {
  it('is taken up by a move in the final direction that is as long as the play', () => {
    fc.assert(
      fc.property(play, approach, fc.double({ min: 0, max: 1, noNaN: true }), (b, way, share) => {
        expect(Math.abs(lagAfter(way * share * b, way * b, b, way))).toBe(0);
      }),
    );
  });

  it('is there in full after a move the other way that is as long', () => {
    fc.assert(
      fc.property(play, approach, fc.double({ min: 0, max: 1, noNaN: true }), (b, way, share) => {
        expect(lagAfter(way * share * b, -way * b, b, way)).toBeCloseTo(way * b, 12);
      }),
    );
  });

  it('does not care whether a move is made at once or in parts', () => {
    fc.assert(
      fc.property(
        play,
        approach,
        move,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (b, way, m, s) => {
          const inParts = lagAfter(lagAfter(0, m * s, b, way), m * (1 - s), b, way);
          expect(inParts).toBeCloseTo(lagAfter(0, m, b, way), 9);
        },
      ),
    );
  });

  it('leaves the tube where a push between two cheeks would', () => {
    // The tube as a thing of its own, pushed along by whichever cheek meets it, in thousands of steps.
    fc.assert(
      fc.property(play, approach, fc.array(move, { maxLength: 12 }), (b, way, moves) => {
        let lag = 0;
        let motor = 0;
        let tube = 0;
        for (const by of moves) {
          lag = lagAfter(lag, by, b, way);
          for (let step = 0; step < 500; step += 1) {
            motor += by / 500;
            const [low, high] = way === 1 ? [motor, motor + b] : [motor - b, motor];
            if (tube < low) tube = low;
            if (tube > high) tube = high;
          }
          expect(motor + lag).toBeCloseTo(tube, 9);
        }
      }),
      { numRuns: 50 },
    );
  });
});
