'use client';

import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { Group } from 'three';
import { canvasTexture } from './canvas-texture';
import { drawOrder } from './draw-order';
import { fistFolds, fistOutline } from './fist-shape';
import type { SkyView } from './sky-view';
import type { SkyQuad } from './sky-quads';
import { skyQuads } from './sky-quads';
import { cameraTurn } from './to-scene';

const cellPx = 160;
/** Cell 0 is a plain fist, cells 1–8 carry the count of fists up to their upper edge. */
const cells = 9;

function drawFist(pen: CanvasRenderingContext2D, count: number): void {
  const scale = cellPx / 100;
  pen.save();
  pen.scale(scale, scale);
  pen.lineWidth = 1.8;
  pen.lineJoin = 'round';
  pen.fillStyle = 'rgba(240, 205, 150, 0.05)';
  pen.strokeStyle = 'rgba(244, 214, 166, 0.85)';
  const outline = new Path2D(fistOutline);
  pen.fill(outline);
  pen.stroke(outline);
  pen.lineWidth = 1.4;
  pen.strokeStyle = 'rgba(244, 214, 166, 0.45)';
  pen.stroke(new Path2D(fistFolds));
  if (count > 0) {
    pen.fillStyle = '#f8e3bd';
    pen.textAlign = 'center';
    pen.textBaseline = 'middle';
    pen.font = '600 22px "Source Sans 3 Variable", system-ui, sans-serif';
    pen.fillText(String(count), 50, 36);
  }
  pen.restore();
}

const quad = (azimuthDeg: number, bottomDeg: number, cell: number): SkyQuad => ({
  azimuthDeg,
  altitudeDeg: bottomDeg + 5,
  widthDeg: 10,
  heightDeg: 10,
  cell: { u: cell / cells, v: 0, width: 1 / cells, height: 1 },
});

/** Fists side by side along the horizon, and a stack of them upward wherever one looks. */
export function Fists({ view }: { view: SkyView }) {
  const stack = useRef<Group>(null);
  const texture = useMemo(
    () =>
      canvasTexture(cellPx * cells, cellPx, (pen) => {
        for (let cell = 0; cell < cells; cell += 1) {
          drawFist(pen, cell);
          pen.translate(cellPx, 0);
        }
      }),
    [],
  );
  const row = useMemo(
    () => skyQuads(Array.from({ length: 36 }, (_, index) => quad(index * 10 + 5, 0, 0))),
    [],
  );
  const column = useMemo(
    () => skyQuads(Array.from({ length: cells - 1 }, (_, index) => quad(0, index * 10, index + 1))),
    [],
  );
  useEffect(
    () => () => {
      row.dispose();
      column.dispose();
      texture?.dispose();
    },
    [row, column, texture],
  );
  useFrame(() => {
    // The stack stands on one of the row's fists, so that the two can be counted together.
    const on = Math.floor(view.azimuthDeg / 10) * 10 + 5;
    if (stack.current !== null) stack.current.rotation.y = cameraTurn(on, 0).aboutY;
  });
  if (texture === null) return null;
  return (
    <>
      <mesh geometry={row} renderOrder={drawOrder.fists} frustumCulled={false}>
        <meshBasicMaterial
          map={texture}
          transparent
          opacity={0.6}
          depthTest={false}
          depthWrite={false}
          toneMapped={false}
        />
      </mesh>
      <group ref={stack}>
        <mesh geometry={column} renderOrder={drawOrder.fists} frustumCulled={false}>
          <meshBasicMaterial
            map={texture}
            transparent
            depthTest={false}
            depthWrite={false}
            toneMapped={false}
          />
        </mesh>
      </group>
    </>
  );
}
