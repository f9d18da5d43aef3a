import type { Matrix3 } from '../units/matrix';
import { cross, dot, type Vector3 } from '../units/vector';
import { singularValues } from './singular-values';

/** A unit vector in one frame, the same direction in the other, and how much its square counts. */
export type VectorPair = { from: Vector3; to: Vector3; weight: number };

// Two directions 0.001° apart (or from opposite) leave 8·10⁻¹¹ of the weight to fix the last turn.
const leastShare = 1e-12;

/**
 * The rotation R that makes Σ weight·|to − R·from|² least (Wahba's problem). Null when the pairs
 * leave a turn open: fewer than two, or all along one line.
 *
 * Source: Markley's SVD method (Markley & Crassidis 2014, Fundamentals of Spacecraft Attitude
 * Determination and Control, ch. 5). The third columns are taken as cross products of the first
 * two, which is the method's sign det U · det V, and exists for two pairs as well, where B has rank 2.
 */
export function fitRotation(pairs: readonly VectorPair[]): Matrix3 | null {
  const profile = [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) =>
      pairs.reduce((sum, { from, to, weight }) => sum + weight * (to[i] ?? 0) * (from[j] ?? 0), 0),
    ),
  );
  const { u, s, v } = singularValues(profile);
  const [first, second, third] = [0, 1, 2].sort((i, j) => (s[j] ?? 0) - (s[i] ?? 0));
  const column = (columns: number[][], i = 0): Vector3 => {
    const [x = 0, y = 0, z = 0] = columns[i] ?? [];
    return [x, y, z];
  };
  const [u1, u2] = [column(u, first), column(u, second)];
  const [v1, v2] = [column(v, first), column(v, second)];
  const [u3, v3] = [cross(u1, u2), cross(v1, v2)];

  // s₂ ± s₃, the sign that of det B: nought where a turn about the first column costs nothing.
  const [s1, s2, s3] = [s[first ?? 0] ?? 0, s[second ?? 0] ?? 0, s[third ?? 0] ?? 0];
  const mirrored = dot(column(u, third), u3) * dot(column(v, third), v3) < 0;
  if (!(s2 + (mirrored ? -s3 : s3) > leastShare * s1)) return null;

  const at = (i: 0 | 1 | 2, j: 0 | 1 | 2): number => u1[i] * v1[j] + u2[i] * v2[j] + u3[i] * v3[j];
  // prettier-ignore
  return [
    at(0, 0), at(0, 1), at(0, 2),
    at(1, 0), at(1, 1), at(1, 2),
    at(2, 0), at(2, 1), at(2, 2),
  ];
}
