import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driven, held, lagDegAt, positionDeg, secondsOf, stepped } from './axis-motion';
import { rockerSpeedsDegPerSecond } from './run-log';

const free = { leastDeg: -Infinity, mostDeg: Infinity };
const rest = { fromDeg: 10, lagDeg: 0 };

describe('a step', () => {
  it.each([
    ['of 0.4° takes 4 s, at 0.1°/s', 0.4, 4],
    ['of 0.5° takes 5 s', 0.5, 5],
    ['of 0.6° takes 1 s, at 0.6°/s', 0.6, 1],
    ['of 6° down takes 10 s', -6, 10],
    ['of nothing takes no time', 0, 0],
  ])('%s', (_, byDeg, seconds) => {
    const motion = stepped(rest, byDeg, free);
    expect(secondsOf(motion)).toBeCloseTo(seconds, 12);
    expect(positionDeg(motion, seconds)).toBeCloseTo(10 + byDeg, 12);
    expect(positionDeg(motion, seconds / 2)).toBeCloseTo(10 + byDeg / 2, 12);
    expect(positionDeg(motion, seconds + 1000)).toBeCloseTo(10 + byDeg, 12);
  });

  it('ends at the stop', () => {
    expect(positionDeg(stepped(rest, 60, { leastDeg: -20, mostDeg: 40 }), 1e6)).toBe(40);
    expect(positionDeg(stepped(rest, -60, { leastDeg: -20, mostDeg: 40 }), 1e6)).toBe(-20);
  });

  it('from beyond the stop goes back only', () => {
    const beyond = { fromDeg: 50, lagDeg: 0 };
    expect(positionDeg(stepped(beyond, 5, { leastDeg: -20, mostDeg: 40 }), 1e6)).toBe(50);
    expect(positionDeg(stepped(beyond, -5, { leastDeg: -20, mostDeg: 40 }), 1e6)).toBe(40);
  });
});

describe('a rocker', () => {
  it.each(rockerSpeedsDegPerSecond)('held at %d°/s goes on at that speed', (speed) => {
    for (const way of [1, -1]) {
      const motion = held(rest, way * speed, free);
      expect(positionDeg(motion, 1)).toBeCloseTo(10 + way * speed, 12);
      expect(positionDeg(motion, 7200)).toBeCloseTo(10 + way * speed * 7200, 7);
    }
  });

  it('stands at the stop for as long as it is held', () => {
    const motion = held(rest, 3, { leastDeg: -20, mostDeg: 40 });
    expect(positionDeg(motion, 9)).toBeCloseTo(37, 12);
    expect(positionDeg(motion, 11)).toBe(40);
    expect(positionDeg(motion, 5000)).toBe(40);
  });
});

describe('a go-to', () => {
  it('ends on its target with the play taken up, whatever the way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.constantFrom(1 as const, -1 as const),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (byDeg, playDeg, approach, share) => {
          const play = { playDeg, approach };
          const at = { fromDeg: 10, lagDeg: approach * share * playDeg };
          const motion = driven(at, byDeg, 3, play, free);
          const end = secondsOf(motion) + 1e-9;
          expect(positionDeg(motion, end)).toBeCloseTo(10 + byDeg, 9);
          expect(lagDegAt(motion, end, playDeg, approach)).toBeCloseTo(0, 9);
          // At the speed of the slew throughout, and never farther round than the play asks for.
          expect(secondsOf(motion) * 3).toBeLessThanOrEqual(Math.abs(byDeg) + 3 * playDeg + 1e-9);
        },
      ),
    );
  });

  it('takes the straight way when that ends in the final direction', () => {
    const play = { playDeg: 0.1, approach: 1 } as const;
    expect(driven(rest, 30, 3, play, free).legs).toHaveLength(1);
    const [there, back] = driven(rest, -30, 3, play, free).legs;
    expect(there).toEqual({ degPerSecond: -3, seconds: 30.15 / 3 });
    expect(back?.degPerSecond).toBe(3);
    expect(back?.seconds).toBeCloseTo(0.05, 9);
  });
});
