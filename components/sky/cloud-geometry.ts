import { BufferAttribute, BufferGeometry } from 'three';
import { degreesToRadians } from '@/lib/units/angle';
import type { Vector3 } from '@/lib/units/vector';
import { cross, normalise } from '@/lib/units/vector';
import type { CloudPatch } from '@/lib/pointing/scenario';
import { sceneDirection, skyRadius } from './to-scene';

const rings = 26;
const spokes = 96;

const smooth = (from: number, to: number, value: number): number => {
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return share * share * (3 - 2 * share);
};

/** A number from 0 to 1 that looks random, the same for the same cell each time. */
function scatter(x: number, y: number, z: number): number {
  const value = Math.sin(x * 127.1 + y * 311.7 + z * 74.7) * 43758.5453;
  return value - Math.floor(value);
}

/** Value noise: random numbers at whole cells, smoothed between. */
function noise(x: number, y: number, z: number): number {
  const [cx, cy, cz] = [Math.floor(x), Math.floor(y), Math.floor(z)];
  const [fx, fy, fz] = [smooth(0, 1, x - cx), smooth(0, 1, y - cy), smooth(0, 1, z - cz)];
  let sum = 0;
  for (let corner = 0; corner < 8; corner += 1) {
    const [dx, dy, dz] = [corner & 1, (corner >> 1) & 1, corner >> 2];
    const weight = (dx ? fx : 1 - fx) * (dy ? fy : 1 - fy) * (dz ? fz : 1 - fz);
    sum += weight * scatter(cx + dx, cy + dy, cz + dz);
  }
  return sum;
}

/** Lumps from 0 to 1 at a direction; taken on the whole sky, so that overlapping patches match. */
const lumpsAt = (x: number, y: number, z: number): number =>
  noise(x * 8.5, y * 18, z * 8.5) * 0.62 + noise(x * 23 + 7, y * 48 + 7, z * 23 + 7) * 0.38;

/**
 * Spherical caps with an opacity and a shade a vertex, nothing at the patch's true radius. Worked
 * out once here: the same noise per pixel would cost a laptop without a graphics card half its frames.
 */
export function cloudGeometry(clouds: readonly CloudPatch[]): BufferGeometry {
  const position: number[] = [];
  const veil: number[] = [];
  const index: number[] = [];
  for (const cloud of clouds) {
    const centre = sceneDirection(cloud.azimuthDeg, cloud.altitudeDeg);
    // At the zenith any "right" will do; the nudge keeps the product from vanishing.
    const right: Vector3 = normalise(cross(centre, [0, 1, 1e-6]));
    const up = cross(right, centre);
    const start = position.length / 3;
    for (let ring = 0; ring <= rings; ring += 1) {
      const share = ring / rings;
      const reach = degreesToRadians(cloud.radiusDeg * share);
      for (let spoke = 0; spoke <= spokes; spoke += 1) {
        const turn = (spoke / spokes) * 2 * Math.PI;
        const sideways = Math.sin(reach) * Math.cos(turn);
        const upward = Math.sin(reach) * Math.sin(turn);
        const at = [0, 1, 2].map((axis) => {
          const [c = 0, r = 0, u = 0] = [centre[axis], right[axis], up[axis]];
          return c * Math.cos(reach) + r * sideways + u * upward;
        });
        const [x = 0, y = 0, z = 0] = at;
        position.push(x * skyRadius, y * skyRadius, z * skyRadius);
        const lumps = lumpsAt(x, y, z);
        const body = smooth(0, 0.42, 1 - share + (lumps - 0.55) * 0.5);
        veil.push(
          body * smooth(0, 0.1, 1 - share) * (0.72 + 0.2 * lumps),
          smooth(0.25, 0.9, body * (0.4 + lumps)),
        );
      }
    }
    for (let ring = 0; ring < rings; ring += 1) {
      for (let spoke = 0; spoke < spokes; spoke += 1) {
        const corner = start + ring * (spokes + 1) + spoke;
        const outer = corner + spokes + 1;
        index.push(corner, outer, corner + 1, corner + 1, outer, outer + 1);
      }
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  geometry.setAttribute('veil', new BufferAttribute(new Float32Array(veil), 2));
  geometry.setIndex(index);
  return geometry;
}
