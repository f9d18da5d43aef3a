import { describe, expect, it } from 'vitest';
import { achievedErrors } from '@/lib/pointing/achieved-errors';
import { goToReadings } from '@/lib/pointing/align';
import { fitOnTwo, type TwoStarFit } from '@/lib/pointing/fit-on-two';
import { mountDirection } from '@/lib/pointing/mount';
import type { MountErrors } from '@/lib/pointing/pointing-model';
import { pairWorth } from '@/lib/pointing/pair-worth';
import type { Telescope } from '@/lib/pointing/scenario';
import type { StarPosition } from '@/lib/pointing/star-position';
import { targetAzimuthDeg, targetBands } from '@/lib/pointing/target-grid';
import { transform, transpose, type Matrix3 } from '@/lib/units/matrix';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { randomFrom, type Random } from '@/lib/variants/random';
import { sighting, standing } from '../support/aligning';
import { normalFrom } from '../support/normal';

const targets = targetBands.flatMap((band) =>
  Array.from({ length: band.count }, (_, j) =>
    directionFromAzAlt(targetAzimuthDeg(band, j), band.altitudeDeg),
  ),
);
const targetsPerDraw = 40;

type Draw = { fit: TwoStarFit; base: Matrix3; errors: MountErrors };

/** One evening: a base off level and off north, errors by their priors, both stars centred badly. */
function draw(
  random: Random,
  telescope: Telescope,
  stars: readonly [StarPosition, StarPosition],
): Draw {
  const normal = normalFrom(random);
  const errors = {
    altitudeZeroDeg: (normal() * telescope.altitudeZeroArcmin) / 60,
    coneDeg: (normal() * telescope.coneArcmin) / 60,
    axisSkewDeg: (normal() * telescope.axisSkewArcmin) / 60,
  };
  const base = standing(normal() * 0.35, normal() * 0.35, normal() * 10);
  const sigmaDeg = telescope.centringArcmin / 60;
  const seen = (at: StarPosition) =>
    sighting({ base, errors, at, rightDeg: normal() * sigmaDeg, upDeg: normal() * sigmaDeg });
  const fit = fitOnTwo(telescope.computer, [seen(stars[0]), seen(stars[1])]);
  if (fit === null) throw new Error('this pair leaves nothing open');
  return { fit, base, errors };
}

/** Root mean square miss over evenings and targets of the grid drawn at random, and its relative error. */
function simulated(
  seed: string,
  telescope: Telescope,
  stars: readonly [StarPosition, StarPosition],
  draws: number,
) {
  const random = randomFrom(seed);
  let sum = 0;
  let sumOfSquares = 0;
  for (let i = 0; i < draws; i++) {
    const { fit, base, errors } = draw(random, telescope, stars);
    const toSky = transpose(base);
    let square = 0;
    for (let t = 0; t < targetsPerDraw; t++) {
      const wanted = random.pick(targets) ?? [0, 0, 1];
      const readings = goToReadings(fit.model, wanted);
      if (readings === null) throw new Error('every target is within reach of a model');
      const landed = transform(toSky, mountDirection(readings, errors));
      square += (separationDeg(landed, wanted) * 60) ** 2 / targetsPerDraw;
    }
    sum += square;
    sumOfSquares += square * square;
  }
  const mean = sum / draws;
  const relativeOfSquare = Math.sqrt((sumOfSquares / draws - mean * mean) / draws) / mean;
  return { rmsArcmin: Math.sqrt(mean), relativeError: relativeOfSquare / 2 };
}

function anyPair(random: Random): readonly [StarPosition, StarPosition] {
  const star = () => ({ azimuthDeg: random.between(0, 360), altitudeDeg: random.between(20, 70) });
  return [star(), star()];
}

const telescope = (computer: Telescope['computer'], centringArcmin: number): Telescope => ({
  focalLengthMm: 500,
  apertureMm: 80,
  computer,
  centringArcmin,
  altitudeZeroArcmin: computer === 'fixed-zero' ? 10 : 30,
  coneArcmin: 8,
  axisSkewArcmin: 4,
});

const apartDeg = ([a, b]: readonly [StarPosition, StarPosition]): number =>
  separationDeg(
    directionFromAzAlt(a.azimuthDeg, a.altitudeDeg),
    directionFromAzAlt(b.azimuthDeg, b.altitudeDeg),
  );

/** The design's bar, of which the draws' own scatter may use a quarter. */
function expectWithinTenPercent(
  seed: string,
  scope: Telescope,
  pair: readonly [StarPosition, StarPosition],
) {
  const expected = pairWorth(scope, 30, pair[0], pair[1]).expectedErrorArcmin ?? NaN;
  const { rmsArcmin, relativeError } = simulated(seed, scope, pair, 1500);
  expect(relativeError).toBeLessThan(0.025);
  expect(Math.abs(rmsArcmin / expected - 1)).toBeLessThan(0.1);
}

// The small-error model is linear and knows no mount; the draws go through the exact mechanics, the
// exact inverse and the exact fit, with nothing left out.
describe('the small-error model of a pair agrees with drawn evenings within 10 %', () => {
  // Closer than 6° a centring error of 1° turns the base by more than 10°, which is not small.
  it('fixed zero: random pairs 6° apart or more, centred to between 3′ and 1°', () => {
    const random = randomFrom('pairs for a fixed zero');
    for (let done = 0; done < 24;) {
      const pair = anyPair(random);
      if (apartDeg(pair) < 6) continue;
      done++;
      const scope = telescope('fixed-zero', done % 2 === 0 ? 60 : random.between(3, 60));
      expectWithinTenPercent(`fixed ${String(done)}`, scope, pair);
    }
  });

  it('solved zero: random pairs whose expected error is below 3°', () => {
    const random = randomFrom('pairs for a solved zero');
    for (let done = 0; done < 24;) {
      const pair = anyPair(random);
      const scope = telescope('solved-zero', random.pick([3, 7.5, 15, 30, 60]) ?? 3);
      const expected = pairWorth(scope, 30, pair[0], pair[1]).expectedErrorArcmin;
      if (expected === null || expected >= 180) continue;
      done++;
      expectWithinTenPercent(`solved ${String(done)}`, scope, pair);
    }
  });

  it.each([
    ['fixed zero, 6° apart', 'fixed-zero', 60, 10, 42, 16, 46.2],
    ['solved zero, 12° of azimuth', 'solved-zero', 5, 10, 30, 22, 40],
    ['solved zero, low and 60° of azimuth', 'solved-zero', 38, 10, 20, 70, 30],
  ] as const)('at the edge of the claim: %s', (name, computer, centring, az1, alt1, az2, alt2) => {
    const pair = [
      { azimuthDeg: az1, altitudeDeg: alt1 },
      { azimuthDeg: az2, altitudeDeg: alt2 },
    ] as const;
    expectWithinTenPercent(name, telescope(computer, centring), pair);
  });
});

// Domain: the hit rate of the small-error model takes the miss for isotropic, "within a few points".
describe('the approximate hit rate agrees with counted hits', () => {
  it.each([
    ['solved-zero', 90, 40, 200, 55],
    ['fixed-zero', 30, 30, 120, 60],
    ['solved-zero', 10, 25, 190, 50],
  ] as const)('%s, azimuths %i° and %i°', (computer, az1, alt1, az2, alt2) => {
    const pair = [
      { azimuthDeg: az1, altitudeDeg: alt1 },
      { azimuthDeg: az2, altitudeDeg: alt2 },
    ] as const;
    const scope = telescope(computer, 7.5);
    const random = randomFrom(`hits ${String(az1)}`);
    const fieldRadiusArcmin = 20;
    const draws = 600;
    let hits = 0;
    for (let i = 0; i < draws; i++) {
      const { fit, base, errors } = draw(random, scope, pair);
      hits += achievedErrors(fit.model, { base, errors }, fieldRadiusArcmin, 60).hitRate / draws;
    }
    const { hitRate } = pairWorth(scope, fieldRadiusArcmin, pair[0], pair[1]);
    expect(hitRate).toBeGreaterThan(0.3);
    expect(hitRate).toBeLessThan(0.97);
    expect(Math.abs(hits - hitRate)).toBeLessThan(0.05);
  });
});
