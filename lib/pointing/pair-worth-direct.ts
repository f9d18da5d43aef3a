import { arcminutesToRadians, degreesToRadians, radiansToArcminutes } from '../units/angle';
import { highestConditionNumber } from './pair-error-model';
import { sensitivityRows } from './pair-condition';
import type { PairWorth } from './pair-worth';
import type { Telescope } from './scenario';
import { singularValues, transpose } from './singular-values';
import { targetAzimuthDeg, targetBands } from './target-grid';
import type { StarPosition } from './star-position';

type Matrix = readonly (readonly number[])[];

const multiply = (a: Matrix, b: Matrix): number[][] => {
  const columns = transpose(b);
  return a.map((row) =>
    columns.map((column) => row.reduce((sum, x, i) => sum + x * (column[i] ?? 0), 0)),
  );
};

const subtract = (a: Matrix, b: Matrix): number[][] =>
  a.map((row, i) => row.map((x, j) => x - (b[i]?.[j] ?? 0)));

const squares = (m: Matrix, weights?: readonly number[]): number =>
  m.flat().reduce((sum, x, i) => sum + x * x * (weights?.[i % weights.length] ?? 1), 0);

/** Effects of (altitude zero, cone, skew) that the fit does not solve for, on the two readings. */
function spoilerRows(computer: Telescope['computer'], altitudeDeg: number): number[][] {
  const sin = Math.sin(degreesToRadians(altitudeDeg));
  return computer === 'solved-zero'
    ? [
        [1, sin],
        [0, 0],
      ]
    : [
        [0, 1, sin],
        [1, 0, 0],
      ];
}

/**
 * The worth of a pair as its definition reads: pseudo-inverse of the stacked sensitivities, then
 * one target of the grid after the other. Slow; it is what `pairWorth` is checked against.
 */
export function pairWorthDirect(
  telescope: Telescope,
  fieldRadiusArcmin: number,
  star1: StarPosition,
  star2: StarPosition,
): PairWorth {
  const { computer } = telescope;
  const stacked = [...sensitivityRows(computer, star1), ...sensitivityRows(computer, star2)];
  const { u, s, v } = singularValues(stacked);
  const conditionNumber = Math.max(...s) / Math.min(...s);
  if (!(conditionNumber <= highestConditionNumber)) {
    return { expectedErrorArcmin: null, hitRate: 0, conditionNumber };
  }
  // Rows of `v` are right singular vectors, rows of `u` left ones: G = Σ v uᵀ / s.
  const gain = multiply(
    transpose(v),
    u.map((row, i) => row.map((x) => x / (s[i] ?? 1))),
  );
  const spoilers = [
    ...spoilerRows(computer, star1.altitudeDeg),
    ...spoilerRows(computer, star2.altitudeDeg),
  ];
  const deviations = [telescope.altitudeZeroArcmin, telescope.coneArcmin, telescope.axisSkewArcmin];
  const variances = deviations
    .slice(computer === 'solved-zero' ? 1 : 0)
    .map((arcmin) => arcminutesToRadians(arcmin) ** 2);
  const centring = arcminutesToRadians(telescope.centringArcmin) ** 2;
  const radius2 = arcminutesToRadians(fieldRadiusArcmin) ** 2;
  const carried = multiply(gain, spoilers);

  let sum = 0;
  let hits = 0;
  let count = 0;
  for (const band of targetBands) {
    for (let j = 0; j < band.count; j++) {
      const target = { azimuthDeg: targetAzimuthDeg(band, j), altitudeDeg: band.altitudeDeg };
      const rows = sensitivityRows(computer, target);
      const fromSpoilers = subtract(
        multiply(rows, carried),
        spoilerRows(computer, target.altitudeDeg),
      );
      const square = squares(fromSpoilers, variances) + centring * squares(multiply(rows, gain));
      sum += square;
      hits += 1 - Math.exp(-radius2 / square);
      count++;
    }
  }
  return {
    expectedErrorArcmin: radiansToArcminutes(Math.sqrt(sum / count)),
    hitRate: hits / count,
    conditionNumber,
  };
}
