import { BufferAttribute, BufferGeometry } from 'three';
import { degreesToRadians } from '@/lib/units/angle';
import type { Vector3 } from '@/lib/units/vector';
import { cross, normalise } from '@/lib/units/vector';
import { sceneDirection, skyRadius } from './to-scene';

/** An upright picture pinned to the sky, facing the viewer. */
export type SkyQuad = {
  azimuthDeg: number;
  altitudeDeg: number;
  widthDeg: number;
  heightDeg: number;
  /** Part of the texture, from its lower left corner, 0–1. */
  cell: { u: number; v: number; width: number; height: number };
};

/** Several pictures as one mesh with texture coordinates. */
export function skyQuads(quads: readonly SkyQuad[]): BufferGeometry {
  const position = new Float32Array(quads.length * 12);
  const uv = new Float32Array(quads.length * 8);
  const index: number[] = [];
  quads.forEach((quad, which) => {
    const centre = sceneDirection(quad.azimuthDeg, quad.altitudeDeg);
    const right: Vector3 = normalise(cross(centre, [0, 1, 0]));
    const up = cross(right, centre);
    const halfWidth = Math.tan(degreesToRadians(quad.widthDeg / 2));
    const halfHeight = Math.tan(degreesToRadians(quad.heightDeg / 2));
    const corners = [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const;
    corners.forEach(([x, y], corner) => {
      const vertex = which * 4 + corner;
      for (const axis of [0, 1, 2] as const) {
        position[vertex * 3 + axis] =
          (centre[axis] + right[axis] * x * halfWidth + up[axis] * y * halfHeight) * skyRadius;
      }
      uv[vertex * 2] = quad.cell.u + ((x + 1) / 2) * quad.cell.width;
      uv[vertex * 2 + 1] = quad.cell.v + ((y + 1) / 2) * quad.cell.height;
    });
    const first = which * 4;
    index.push(first, first + 1, first + 2, first, first + 2, first + 3);
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(position, 3));
  geometry.setAttribute('uv', new BufferAttribute(uv, 2));
  geometry.setIndex(index);
  return geometry;
}
