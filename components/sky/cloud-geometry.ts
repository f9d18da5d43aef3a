import { BufferAttribute, BufferGeometry } from 'three';
import type { CloudPatch } from '@/lib/pointing/scenario';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { scenePoint } from './to-scene';

/** Mesh width in degrees: half of what the smallest lumps measure. */
const stepDeg = 1.5;
const columns = 360 / stepDeg;
const rows = 90 / stepDeg;

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

type Veil = { opacity: number; shade: number };

/** How thick the cloud is in a direction: the thickest patch counts, none beyond its true radius. */
function veilAt(clouds: readonly CloudPatch[], azimuthDeg: number, altitudeDeg: number): Veil {
  const u = directionFromAzAlt(azimuthDeg, altitudeDeg);
  let depth = 0;
  for (const cloud of clouds) {
    const centre = directionFromAzAlt(cloud.azimuthDeg, cloud.altitudeDeg);
    depth = Math.max(depth, 1 - separationDeg(u, centre) / cloud.radiusDeg);
  }
  if (depth === 0) return { opacity: 0, shade: 0 };
  const lumps = lumpsAt(u[0], u[2], u[1]);
  const body = smooth(0, 0.42, depth + (lumps - 0.55) * 0.5);
  return {
    opacity: body * smooth(0, 0.1, depth) * (0.74 + 0.2 * lumps),
    shade: smooth(0.25, 0.9, body * (0.4 + lumps)),
  };
}

/**
 * All patches as one sheet with an opacity and a shade a vertex. Worked out once here, and never
 * painted twice over: noise per pixel, or patches over each other, would cost a laptop without a
 * graphics card half its frames.
 */
export function cloudGeometry(clouds: readonly CloudPatch[]): BufferGeometry {
  const veils: Veil[] = [];
  const position: number[] = [];
  for (let row = 0; row <= rows; row += 1) {
    for (let column = 0; column <= columns; column += 1) {
      const azimuthDeg = column * stepDeg;
      const altitudeDeg = row * stepDeg;
      position.push(...scenePoint(azimuthDeg, altitudeDeg));
      // The last column is the first again: the circle closes without a seam.
      veils.push(veilAt(clouds, azimuthDeg % 360, altitudeDeg));
    }
  }
  const index: number[] = [];
  const clear = (vertex: number): boolean => (veils[vertex]?.opacity ?? 0) === 0;
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const corner = row * (columns + 1) + column;
      const above = corner + columns + 1;
      if (clear(corner) && clear(corner + 1) && clear(above) && clear(above + 1)) continue;
      index.push(corner, corner + 1, above, corner + 1, above + 1, above);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  geometry.setAttribute(
    'veil',
    new BufferAttribute(
      new Float32Array(veils.flatMap(({ opacity, shade }) => [opacity, shade])),
      2,
    ),
  );
  geometry.setIndex(index);
  return geometry;
}
