'use client';

import { useEffect, useMemo } from 'react';
import { canvasTexture } from './canvas-texture';
import type { SignpostDirection } from './directions';
import { signpostDirections } from './directions';
import { drawOrder } from './draw-order';
import { skyQuads } from './sky-quads';

const cellPx = 256;

/** A pointed board on a post, cut from pale paper. */
function drawSignpost(pen: CanvasRenderingContext2D, direction: SignpostDirection): void {
  const cardinal = direction.sign.length === 1;
  pen.fillStyle = '#6d6353';
  pen.beginPath();
  pen.roundRect(119, 60, 18, 196, 4);
  pen.fill();
  pen.fillStyle = 'rgba(0, 0, 0, 0.35)';
  pen.beginPath();
  pen.roundRect(33, 37, 190, 98, 16);
  pen.fill();
  pen.fillStyle = cardinal ? '#e6d9bb' : '#bdb299';
  pen.beginPath();
  // The board's lower edge is cut to a point: it means "here, below this".
  pen.moveTo(44, 28);
  pen.lineTo(212, 28);
  pen.quadraticCurveTo(222, 28, 222, 38);
  pen.lineTo(222, 106);
  pen.quadraticCurveTo(222, 116, 212, 117);
  pen.lineTo(142, 122);
  pen.lineTo(128, 138);
  pen.lineTo(114, 122);
  pen.lineTo(44, 117);
  pen.quadraticCurveTo(34, 116, 34, 106);
  pen.lineTo(34, 38);
  pen.quadraticCurveTo(34, 28, 44, 28);
  pen.fill();
  pen.fillStyle = '#23211c';
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.font = `${cardinal ? 700 : 600} ${cardinal ? 86 : 70}px "Source Sans 3 Variable", system-ui, sans-serif`;
  pen.fillText(direction.sign, 128, 75);
}

/** Eight signposts on the ground around the viewer. */
export function Signposts() {
  const texture = useMemo(
    () =>
      canvasTexture(cellPx * 4, cellPx * 2, (pen) => {
        signpostDirections.forEach((direction, index) => {
          pen.save();
          pen.translate((index % 4) * cellPx, Math.floor(index / 4) * cellPx);
          drawSignpost(pen, direction);
          pen.restore();
        });
      }),
    [],
  );
  const geometry = useMemo(
    () =>
      skyQuads(
        signpostDirections.map((direction, index) => ({
          azimuthDeg: direction.azimuthDeg,
          altitudeDeg: -2.4,
          widthDeg: direction.sign.length === 1 ? 7 : 5.8,
          heightDeg: direction.sign.length === 1 ? 7 : 5.8,
          cell: { u: (index % 4) / 4, v: index < 4 ? 0.5 : 0, width: 0.25, height: 0.5 },
        })),
      ),
    [],
  );
  useEffect(
    () => () => {
      geometry.dispose();
      texture?.dispose();
    },
    [geometry, texture],
  );
  if (texture === null) return null;
  return (
    <mesh geometry={geometry} renderOrder={drawOrder.signposts} frustumCulled={false}>
      <meshBasicMaterial
        map={texture}
        transparent
        depthTest={false}
        depthWrite={false}
        toneMapped={false}
      />
    </mesh>
  );
}
