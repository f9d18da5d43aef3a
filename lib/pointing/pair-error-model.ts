import { arcminutesToRadians, degreesToRadians } from '../units/angle';
import type { Telescope } from './scenario';
import { pairConditionNumber } from './pair-condition';
import type { StarPosition } from './star-position';

/** Above this the readings leave something undetermined: a two-star fit is then worth nothing. */
export const highestConditionNumber = 1e4;

type Vector = readonly [number, number, number];

/**
 * Second moments of everything that makes a go-to miss after aligning on one pair of stars, in
 * radians². With u, E, N the direction, east and up unit vectors at a target, its expected square is
 *
 *   tr K − uᵀK u + 2 E·k + 2 N·(c + n sin a) + constant + skew sin² a
 *
 * which is tr(S K Sᵀ) − 2 Σ σ_p² B_pᵀ S x_p + Σ σ_p² |B_p|² written out for the rows
 * S = [−N 0; E 1] and B_e = (0, 1), B_c = (1, 0), B_n = (sin a, 0), with x_p = G B_p.
 */
export type PairErrorModel = {
  /** Symmetric 3×3 of the base rotation: xx, yy, zz, xy, xz, yz. */
  rotation: readonly [number, number, number, number, number, number];
  /** Goes with the east vector; its z component never matters, as E is level. */
  east: readonly [number, number];
  /** σ² x of the cone error and of the axis skew: both go with the up vector. */
  cone: Vector;
  skew: Vector;
  constant: number;
  skewVariance: number;
};

type Seen = { u: Vector; east: readonly [number, number]; up: Vector; sinAltitude: number };

function seen({ azimuthDeg, altitudeDeg }: StarPosition): Seen {
  const azimuth = degreesToRadians(azimuthDeg);
  const altitude = degreesToRadians(altitudeDeg);
  const sinA = Math.sin(azimuth);
  const cosA = Math.cos(azimuth);
  const sina = Math.sin(altitude);
  const cosa = Math.cos(altitude);
  return {
    u: [cosa * sinA, cosa * cosA, sina],
    east: [cosA, -sinA],
    up: [-sina * sinA, -sina * cosA, cosa],
    sinAltitude: sina,
  };
}

/**
 * The small-error model of a pair: readings y = A w + B p + ε at both stars, w and (if the computer
 * solves for it) the altitude zero estimated by least squares, the rest of p = (altitude zero, cone,
 * skew) and the centring errors ε left to spoil the go-tos. Null when the pair is undetermined.
 *
 * Everything goes through the normal equations: the condition limit of 10⁴ leaves eight digits.
 * Source: least squares; mount terms to first order as in Wallace 2002, Proc. SPIE 4848.
 */
export function pairErrorModel(
  telescope: Telescope,
  star1: StarPosition,
  star2: StarPosition,
): PairErrorModel | null {
  const a = seen(star1);
  const b = seen(star2);
  const solvesZero = telescope.computer === 'solved-zero';

  // Normal matrix of the rotation: Σ (N Nᵀ + E Eᵀ) = 2 I − u₁u₁ᵀ − u₂u₂ᵀ.
  const nxx = 2 - a.u[0] * a.u[0] - b.u[0] * b.u[0];
  const nyy = 2 - a.u[1] * a.u[1] - b.u[1] * b.u[1];
  const nzz = 2 - a.u[2] * a.u[2] - b.u[2] * b.u[2];
  const nxy = -a.u[0] * a.u[1] - b.u[0] * b.u[1];
  const nxz = -a.u[0] * a.u[2] - b.u[0] * b.u[2];
  const nyz = -a.u[1] * a.u[2] - b.u[1] * b.u[2];
  const cxx = nyy * nzz - nyz * nyz;
  const cxy = nxz * nyz - nxy * nzz;
  const cxz = nxy * nyz - nxz * nyy;
  const det = nxx * cxx + nxy * cxy + nxz * cxz;
  if (det <= 0) return null;
  let ixx = cxx / det;
  let iyy = (nxx * nzz - nxz * nxz) / det;
  let izz = (nxx * nyy - nxy * nxy) / det;
  let ixy = cxy / det;
  let ixz = cxz / det;
  let iyz = (nxy * nxz - nxx * nyz) / det;

  // With the zero solved for, the normal matrix grows by a row b = E₁ + E₂ and the corner 2;
  // its inverse follows from the Schur complement 2 − bᵀN⁻¹b, which vanishes at equal azimuths.
  let izeroX = 0;
  let izeroY = 0;
  let izeroZ = 0;
  let izero = 0;
  const bx = a.east[0] + b.east[0];
  const by = a.east[1] + b.east[1];
  if (solvesZero) {
    const vx = ixx * bx + ixy * by;
    const vy = ixy * bx + iyy * by;
    const vz = ixz * bx + iyz * by;
    const schur = 2 - (bx * vx + by * vy);
    if (schur <= 0) return null;
    izero = 1 / schur;
    izeroX = -vx * izero;
    izeroY = -vy * izero;
    izeroZ = -vz * izero;
    ixx += vx * vx * izero;
    iyy += vy * vy * izero;
    izz += vz * vz * izero;
    ixy += vx * vy * izero;
    ixz += vx * vz * izero;
    iyz += vy * vz * izero;
  }

  // ‖S‖‖S⁻¹‖ in the Frobenius norm is never below the condition number, so that the exact value
  // is needed only for the few pairs near the limit.
  const traces = (solvesZero ? 6 : 4) * (ixx + iyy + izz + izero);
  if (!(traces <= highestConditionNumber ** 2)) {
    const condition = pairConditionNumber(telescope.computer, star1, star2);
    if (!(condition <= highestConditionNumber)) return null;
  }

  const centring = arcminutesToRadians(telescope.centringArcmin) ** 2;
  const coneVariance = arcminutesToRadians(telescope.coneArcmin) ** 2;
  const skewVariance = arcminutesToRadians(telescope.axisSkewArcmin) ** 2;
  const zeroVariance = solvesZero ? 0 : arcminutesToRadians(telescope.altitudeZeroArcmin) ** 2;

  // x_p = (SᵀS)⁻¹ SᵀB_p; SᵀB is −N₁ − N₂ for the cone, −N₁ sin a₁ − N₂ sin a₂ for the skew
  // (neither touches the altitude reading) and E₁ + E₂ for a zero that is taken as given.
  const hx = -a.up[0] - b.up[0];
  const hy = -a.up[1] - b.up[1];
  const hz = -a.up[2] - b.up[2];
  const cx = ixx * hx + ixy * hy + ixz * hz;
  const cy = ixy * hx + iyy * hy + iyz * hz;
  const cz = ixz * hx + iyz * hy + izz * hz;
  const ce = izeroX * hx + izeroY * hy + izeroZ * hz;
  const gx = -a.up[0] * a.sinAltitude - b.up[0] * b.sinAltitude;
  const gy = -a.up[1] * a.sinAltitude - b.up[1] * b.sinAltitude;
  const gz = -a.up[2] * a.sinAltitude - b.up[2] * b.sinAltitude;
  const sx = ixx * gx + ixy * gy + ixz * gz;
  const sy = ixy * gx + iyy * gy + iyz * gz;
  const sz = ixz * gx + iyz * gy + izz * gz;
  const se = izeroX * gx + izeroY * gy + izeroZ * gz;
  const zx = ixx * bx + ixy * by;
  const zy = ixy * bx + iyy * by;
  const zz = ixz * bx + iyz * by;

  return {
    rotation: [
      centring * ixx + coneVariance * cx * cx + skewVariance * sx * sx + zeroVariance * zx * zx,
      centring * iyy + coneVariance * cy * cy + skewVariance * sy * sy + zeroVariance * zy * zy,
      centring * izz + coneVariance * cz * cz + skewVariance * sz * sz + zeroVariance * zz * zz,
      centring * ixy + coneVariance * cx * cy + skewVariance * sx * sy + zeroVariance * zx * zy,
      centring * ixz + coneVariance * cx * cz + skewVariance * sx * sz + zeroVariance * zx * zz,
      centring * iyz + coneVariance * cy * cz + skewVariance * sy * sz + zeroVariance * zy * zz,
    ],
    east: [
      centring * izeroX + coneVariance * cx * ce + skewVariance * sx * se - zeroVariance * zx,
      centring * izeroY + coneVariance * cy * ce + skewVariance * sy * se - zeroVariance * zy,
    ],
    cone: [coneVariance * cx, coneVariance * cy, coneVariance * cz],
    skew: [skewVariance * sx, skewVariance * sy, skewVariance * sz],
    constant:
      centring * izero + coneVariance * (1 + ce * ce) + skewVariance * se * se + zeroVariance,
    skewVariance,
  };
}

/** Expected square of the pointing error at one target, radians². */
export function expectedSquareAt(model: PairErrorModel, target: StarPosition): number {
  const { u, east, up, sinAltitude } = seen(target);
  const [kxx, kyy, kzz, kxy, kxz, kyz] = model.rotation;
  const along =
    kxx * u[0] * u[0] +
    kyy * u[1] * u[1] +
    kzz * u[2] * u[2] +
    2 * (kxy * u[0] * u[1] + kxz * u[0] * u[2] + kyz * u[1] * u[2]);
  const lift =
    up[0] * (model.cone[0] + sinAltitude * model.skew[0]) +
    up[1] * (model.cone[1] + sinAltitude * model.skew[1]) +
    up[2] * (model.cone[2] + sinAltitude * model.skew[2]);
  return (
    kxx +
    kyy +
    kzz -
    along +
    2 * (east[0] * model.east[0] + east[1] * model.east[1]) +
    2 * lift +
    model.constant +
    model.skewVariance * sinAltitude * sinAltitude
  );
}
