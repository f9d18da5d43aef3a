import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { darkPupilMm, lightPast, lightRatio } from './light-gathered';
import { isMirror, lightRay, lightTrain, type LightRay, type TubeOptics } from './light-path';

/** The three telescopes of the product. */
const wren: TubeOptics = {
  tubeType: 'refractor',
  focalLengthMm: 500,
  apertureMm: 80,
  lengthMm: 480,
};
const heron: TubeOptics = {
  tubeType: 'reflector',
  focalLengthMm: 600,
  apertureMm: 120,
  lengthMm: 560,
};
const owl: TubeOptics = {
  tubeType: 'maksutov-cassegrain',
  focalLengthMm: 1365,
  apertureMm: 105,
  lengthMm: 300,
};
const tubes = [
  ['Wren', wren],
  ['Heron', heron],
  ['Owl', owl],
] as const;

/** Where the straight pieces of two rays that lead to the eyepiece cross. */
function crossing(a: LightRay, b: LightRay) {
  const lastLeg = ({ points }: LightRay) => {
    const [from, to] = [points.at(-3), points.at(-2)];
    if (from === undefined || to === undefined) throw new Error('a ray of one piece');
    return { from, dx: to.xMm - from.xMm, dy: to.yMm - from.yMm };
  };
  const [p, q] = [lastLeg(a), lastLeg(b)];
  const k =
    ((q.from.xMm - p.from.xMm) * q.dy - (q.from.yMm - p.from.yMm) * q.dx) /
    (p.dx * q.dy - p.dy * q.dx);
  return { xMm: p.from.xMm + k * p.dx, yMm: p.from.yMm + k * p.dy };
}
/** Directions of the last piece, behind the eyepiece, radians. */
const leavesAt = ({ points }: LightRay): number => {
  const [from, to] = [points.at(-2), points.at(-1)];
  if (from === undefined || to === undefined) throw new Error('a ray of one piece');
  return Math.atan2(to.yMm - from.yMm, to.xMm - from.xMm);
};

describe.each(tubes)('the light in %s', (_, tube) => {
  const train = lightTrain(tube);
  const radius = tube.apertureMm / 2;
  const past = fc
    .integer({ min: Math.ceil(10 * train.shadowRadiusMm), max: 10 * radius })
    .map((tenths) => tenths / 10)
    .filter((height) => height > train.shadowRadiusMm)
    .chain((height) => fc.constantFrom(height, -height));

  it('of one star meets in one point, wherever it came in', () => {
    fc.assert(
      fc.property(past, past, (one, other) => {
        fc.pre(Math.abs(one - other) > 1);
        const at = crossing(
          lightRay(train, { heightMm: one }),
          lightRay(train, { heightMm: other }),
        );
        expect(at.xMm).toBeCloseTo(train.focus.xMm, 6);
        expect(at.yMm).toBeCloseTo(train.focus.yMm, 6);
      }),
    );
  });

  // Gauss: an image stands F tan θ beside the axis. Any first book of optics.
  it('of a star beside the middle meets as far beside the focus as F says', () => {
    const tilt = Math.tan((0.5 * Math.PI) / 180);
    const at = crossing(
      lightRay(train, { heightMm: radius, tilt }),
      lightRay(train, { heightMm: -radius, tilt }),
    );
    const beside = Math.hypot(at.xMm - train.focus.xMm, at.yMm - train.focus.yMm);
    expect(beside).toBeCloseTo(tube.focalLengthMm * tilt, 6);
  });

  // Angular magnification F/f, any first book of optics; small angles.
  it('leaves a 25 mm eyepiece parallel, F/25 times as steep as it came', () => {
    const tilt = 1e-4;
    const directions = [radius, -radius].map((heightMm) =>
      leavesAt(lightRay(train, { heightMm, tilt })),
    );
    expect(directions[0]).toBeCloseTo(directions[1] ?? NaN, 9);
    const straight = leavesAt(lightRay(train, { heightMm: radius }));
    expect(Math.abs((directions[0] ?? NaN) - straight) / tilt).toBeCloseTo(
      tube.focalLengthMm / 25,
      2,
    );
  });

  it('leaves the eyepiece as wide as the exit pupil, aperture over magnification', () => {
    const ends = [radius, -radius].map((heightMm) => lightRay(train, { heightMm }).points.at(-1));
    const width = Math.hypot(
      (ends[0]?.xMm ?? NaN) - (ends[1]?.xMm ?? NaN),
      (ends[0]?.yMm ?? NaN) - (ends[1]?.yMm ?? NaN),
    );
    expect(width).toBeCloseTo((tube.apertureMm * 25) / tube.focalLengthMm, 6);
  });

  it('is thrown back by mirrors at its own angle', () => {
    const { points, met } = lightRay(train, { heightMm: radius });
    met.forEach((part, index) => {
      const element = train.elements[index];
      if (element?.does !== 'fold') return;
      const [before, at, after] = [points[index], points[index + 1], points[index + 2]];
      if (before === undefined || at === undefined || after === undefined) throw new Error(part);
      const angleTo = (to: typeof at) =>
        Math.acos(
          Math.abs(
            (to.xMm - at.xMm) * element.normal.xMm + (to.yMm - at.yMm) * element.normal.yMm,
          ) / Math.hypot(to.xMm - at.xMm, to.yMm - at.yMm),
        );
      expect(angleTo(before)).toBeCloseTo(angleTo(after), 6);
    });
  });
});

describe('the way of the light', () => {
  it('in Wren goes through a lens and a prism, in Heron over two mirrors, in Owl over three', () => {
    const met = (tube: TubeOptics) => lightRay(lightTrain(tube), { heightMm: 38 }).met;
    expect(met(wren)).toEqual(['lens', 'prism', 'eyepiece']);
    expect(met(heron)).toEqual(['main-mirror', 'flat-mirror', 'eyepiece']);
    expect(met(owl)).toEqual([
      ...['corrector', 'main-mirror', 'small-mirror', 'diagonal', 'eyepiece'],
    ]);
    expect(tubes.map(([, tube]) => met(tube).filter(isMirror).length)).toEqual([0, 2, 3]);
  });

  // A parabola y² = 4Fx throws light that comes along its axis exactly to its focus: analytic geometry.
  it('over Heron’s main mirror is that of an exact parabola to a millimetre', () => {
    const [radius, focal] = [60, 600];
    const train = lightTrain(heron);
    const ray = lightRay(train, { heightMm: radius });
    const flat = ray.points[2];
    if (flat === undefined) throw new Error('no flat mirror');
    const vertexAt = heron.lengthMm - 20;
    const sag = radius ** 2 / (4 * focal);
    // From (vertex − sag, 60) to the focus (vertex − 600, 0), cut by the flat at 45°: x − x₀ = −y.
    const flatAt = train.elements[1]?.at.xMm ?? NaN;
    const slope = radius / (focal - sag);
    const yMm = (slope * (flatAt - (vertexAt - focal))) / (1 + slope);
    expect(Math.abs(flat.yMm - yMm)).toBeLessThan(1);
  });

  it('ends at the card, or at the back of the small mirror', () => {
    const train = lightTrain(owl);
    expect(lightRay(train, { heightMm: 40, cardDownToMm: 30 }).ends).toBe('on-the-card');
    expect(lightRay(train, { heightMm: 5 }).ends).toBe('in-the-shadow');
    expect(lightRay(lightTrain(wren), { heightMm: 5 }).ends).toBe('in-the-eye');
  });

  it('fits: the focus stands outside the tube, and small mirrors are small', () => {
    expect(lightTrain(wren).focus.xMm).toBeGreaterThan(wren.lengthMm);
    expect(lightTrain(heron).focus).toMatchObject({ xMm: 90, yMm: 150 });
    expect(lightTrain(owl).focus.xMm).toBeGreaterThan(owl.lengthMm);
    for (const tube of [heron, owl]) {
      const share = (2 * lightTrain(tube).shadowRadiusMm) / tube.apertureMm;
      expect(share).toBeGreaterThan(0.2);
      expect(share).toBeLessThan(0.35);
    }
  });
});

describe('the light that is gathered', () => {
  it('grows as the square of the width', () => {
    expect(lightRatio(120, 80)).toBeCloseTo(2.25, 12);
    expect(lightRatio(70, darkPupilMm)).toBeCloseTo(100, 12);
  });

  it('past a card is what a count of small squares leaves', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...tubes.map(([, tube]) => tube)),
        fc.integer({ min: -100, max: 100 }).map((percent) => percent / 100),
        (tube, cut) => {
          const { shadowRadiusMm } = lightTrain(tube);
          const radius = tube.apertureMm / 2;
          const cardDownToMm = cut * radius;
          const n = 200;
          let [ring, open] = [0, 0];
          for (let i = 0; i < n; i++)
            for (let j = 0; j < n; j++) {
              const [x, y] = [((2 * i + 1) / n - 1) * radius, ((2 * j + 1) / n - 1) * radius];
              const r = Math.hypot(x, y);
              if (r > radius || r < shadowRadiusMm) continue;
              ring += 1;
              if (y <= cardDownToMm) open += 1;
            }
          const share = lightPast({ apertureMm: tube.apertureMm, shadowRadiusMm, cardDownToMm });
          // A row of squares more or less: 2/200 of the height.
          expect(Math.abs(share - open / ring)).toBeLessThan(0.012);
        },
      ),
      { numRuns: 30 },
    );
  });
});
