'use client';

import { useEffect, useMemo } from 'react';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { drawOrder } from './draw-order';
import { figureLines } from './figure-lines';
import type { SkyLight } from './sky-lights';

/** Wider than the one pixel of plain lines, and paler: a drawing laid under the stars. */
const widthPx = 2;

type ConstellationFiguresProps = {
  catalogue: StarCatalogue;
  frame: SkyFrame;
  lights: readonly SkyLight[];
};

/** The figures' lines, without names. */
export function ConstellationFigures({ catalogue, frame, lights }: ConstellationFiguresProps) {
  const figures = useMemo(() => {
    const geometry = new LineSegmentsGeometry();
    geometry.setPositions(figureLines(catalogue, frame, lights));
    const material = new LineMaterial({
      color: 0xd8c49a,
      linewidth: widthPx,
      transparent: true,
      opacity: 0.26,
      depthTest: false,
      depthWrite: false,
      toneMapped: false,
    });
    const lines = new LineSegments2(geometry, material);
    lines.renderOrder = drawOrder.figures;
    lines.frustumCulled = false;
    return lines;
  }, [catalogue, frame, lights]);
  useEffect(
    () => () => {
      figures.geometry.dispose();
      figures.material.dispose();
    },
    [figures],
  );
  return <primitive object={figures} />;
}
