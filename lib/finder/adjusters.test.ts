import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dotAfterTurns, turnsToMove, type Adjusters } from './adjusters';

const arcmin = fc.double({ min: -150, max: 150, noNaN: true });
const offset = fc.record({ rightArcmin: arcmin, upArcmin: arcmin });
/** As finders are built: two screws 60° to 120° apart, 5′ to 40′ a turn. */
const adjusters = fc
  .record({
    alongDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    apartDeg: fc.double({ min: 60, max: 120, noNaN: true }),
    one: fc.double({ min: 5, max: 40, noNaN: true }),
    two: fc.double({ min: 5, max: 40, noNaN: true }),
  })
  .map(({ alongDeg, apartDeg, one, two }): Adjusters => [
    { alongDeg, arcminPerTurn: one },
    { alongDeg: alongDeg + apartDeg, arcminPerTurn: two },
  ]);

it('two screws that are not quite square reach any place', () => {
  fc.assert(
    fc.property(offset, offset, adjusters, (from, to, pair) => {
      const by = {
        rightArcmin: to.rightArcmin - from.rightArcmin,
        upArcmin: to.upArcmin - from.upArcmin,
      };
      const there = dotAfterTurns(from, pair, turnsToMove(by, pair));
      expect(there.rightArcmin).toBeCloseTo(to.rightArcmin, 9);
      expect(there.upArcmin).toBeCloseTo(to.upArcmin, 9);
    }),
  );
});

it('turning one screw and then the other ends where the other order does', () => {
  fc.assert(
    fc.property(offset, adjusters, arcmin, arcmin, (from, pair, a, b) => {
      const oneFirst = dotAfterTurns(dotAfterTurns(from, pair, [a, 0]), pair, [0, b]);
      const both = dotAfterTurns(from, pair, [a, b]);
      expect(oneFirst.rightArcmin).toBeCloseTo(both.rightArcmin, 9);
      expect(oneFirst.upArcmin).toBeCloseTo(both.upArcmin, 9);
    }),
  );
});

// Worked by hand: 10′ a turn to the right, 20′ a turn at 60° from it (10′ right, 17.3205′ up).
it('a screw that slants by 30° carries the dot aside as well, which the other takes back', () => {
  const pair: Adjusters = [
    { alongDeg: 0, arcminPerTurn: 10 },
    { alongDeg: 60, arcminPerTurn: 20 },
  ];
  const slanted = dotAfterTurns({ rightArcmin: 0, upArcmin: 0 }, pair, [0, 1]);
  expect(slanted.rightArcmin).toBeCloseTo(10, 9);
  expect(slanted.upArcmin).toBeCloseTo(17.3205, 4);
  const [one, two] = turnsToMove({ rightArcmin: 0, upArcmin: 17.320508 }, pair);
  expect(one).toBeCloseTo(-1, 6);
  expect(two).toBeCloseTo(1, 6);
});

it('two screws along one line are refused', () => {
  const pair: Adjusters = [
    { alongDeg: 20, arcminPerTurn: 10 },
    { alongDeg: 200, arcminPerTurn: 10 },
  ];
  expect(() => turnsToMove({ rightArcmin: 1, upArcmin: 1 }, pair)).toThrow(RangeError);
});
