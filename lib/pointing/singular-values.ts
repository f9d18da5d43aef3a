/**
 * Thin singular value decomposition M = U diag(s) Vᵀ of a small tall matrix (rows of numbers), by
 * one-sided Jacobi rotations: columns are turned against each other until they are orthogonal.
 * Source: Golub & Van Loan, Matrix Computations, 4th ed., § 8.6.3 (Hestenes' method).
 */
export function singularValues(matrix: readonly (readonly number[])[]): {
  u: number[][];
  s: number[];
  v: number[][];
} {
  const columns = matrix[0]?.length ?? 0;
  const u = transpose(matrix);
  const v = Array.from({ length: columns }, (_, i) =>
    Array.from({ length: columns }, (_unused, j) => (i === j ? 1 : 0)),
  );
  for (let sweep = 0; sweep < 60; sweep++) {
    let turned = false;
    for (let p = 0; p < columns - 1; p++) {
      for (let q = p + 1; q < columns; q++) {
        turned = orthogonalise(u, v, p, q) || turned;
      }
    }
    if (!turned) break;
  }
  const s = u.map((column) => Math.hypot(...column));
  return { u: u.map((column, i) => column.map((x) => (s[i] ? x / s[i] : 0))), s, v };
}

function orthogonalise(u: number[][], v: number[][], p: number, q: number): boolean {
  const up = u[p] ?? [];
  const uq = u[q] ?? [];
  const alpha = product(up, up);
  const beta = product(uq, uq);
  const gamma = product(up, uq);
  if (Math.abs(gamma) <= 1e-15 * Math.sqrt(alpha * beta)) return false;
  const zeta = (beta - alpha) / (2 * gamma);
  const t = (zeta >= 0 ? 1 : -1) / (Math.abs(zeta) + Math.hypot(1, zeta));
  const cos = 1 / Math.hypot(1, t);
  rotate(up, uq, cos, cos * t);
  rotate(v[p] ?? [], v[q] ?? [], cos, cos * t);
  return true;
}

function rotate(x: number[], y: number[], cos: number, sin: number): void {
  for (let i = 0; i < x.length; i++) {
    const xi = x[i] ?? 0;
    const yi = y[i] ?? 0;
    x[i] = cos * xi - sin * yi;
    y[i] = sin * xi + cos * yi;
  }
}

const product = (x: readonly number[], y: readonly number[]): number =>
  x.reduce((sum, xi, i) => sum + xi * (y[i] ?? 0), 0);

export const transpose = (m: readonly (readonly number[])[]): number[][] =>
  (m[0] ?? []).map((_, j) => m.map((row) => row[j] ?? 0));
