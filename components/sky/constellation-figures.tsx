'use client';

import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import { degreesToRadians } from '@/lib/units/angle';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { placeCatalogue } from '@/lib/sky/star-places';
import { drawOrder } from './draw-order';
import { scenePoint, skyRadius } from './to-scene';

/** Lines stop this far before the stars, which stay free to be seen. */
const gapDeg = 0.9;

function figureGeometry(catalogue: StarCatalogue, frame: SkyFrame): BufferGeometry {
  const places = placeCatalogue(catalogue, frame);
  const position: number[] = [];
  const pointOf = (star: number | undefined) => {
    const azimuth = star === undefined ? undefined : places.azimuthDeg[star];
    const altitude = star === undefined ? undefined : places.altitudeDeg[star];
    if (azimuth === undefined || altitude === undefined || altitude < -5) return null;
    return scenePoint(azimuth, altitude);
  };
  for (const { lines } of catalogue.figures) {
    for (const line of lines) {
      for (let i = 1; i < line.length; i += 1) {
        const from = pointOf(line[i - 1]);
        const to = pointOf(line[i]);
        if (from === null || to === null) continue;
        const span = Math.hypot(from[0] - to[0], from[1] - to[1], from[2] - to[2]);
        const gap = (skyRadius * degreesToRadians(gapDeg)) / span;
        if (gap > 0.4) continue;
        for (const share of [gap, 1 - gap]) {
          for (const axis of [0, 1, 2] as const) {
            position.push(from[axis] + (to[axis] - from[axis]) * share);
          }
        }
      }
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  return geometry;
}

type ConstellationFiguresProps = { catalogue: StarCatalogue; frame: SkyFrame };

/** The figures' lines, without names. */
export function ConstellationFigures({ catalogue, frame }: ConstellationFiguresProps) {
  const geometry = useMemo(() => figureGeometry(catalogue, frame), [catalogue, frame]);
  useEffect(
    () => () => {
      geometry.dispose();
    },
    [geometry],
  );
  return (
    <lineSegments geometry={geometry} renderOrder={drawOrder.figures} frustumCulled={false}>
      <lineBasicMaterial
        color={0xd8c49a}
        transparent
        opacity={0.42}
        depthTest={false}
        depthWrite={false}
        toneMapped={false}
      />
    </lineSegments>
  );
}
