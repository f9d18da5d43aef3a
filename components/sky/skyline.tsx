'use client';

import { useEffect, useMemo } from 'react';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { HorizonPoint } from '@/lib/pointing/scenario';
import { drawOrder } from './draw-order';
import { skylineGeometry } from './skyline-geometry';
import { twilightColours } from './twilight-colours';

const vertexShader = /* glsl */ `
  attribute vec4 tone;
  varying vec4 colour;
  void main() {
    colour = tone;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

const fragmentShader = /* glsl */ `
  varying vec4 colour;
  void main() {
    float grain = fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
    gl_FragColor = vec4(colour.rgb + (grain - 0.5) / 80.0, colour.a);
  }
`;

const look = {
  vertexShader,
  fragmentShader,
  side: 2 /* DoubleSide */,
  depthTest: false,
  depthWrite: false,
} as const;

type SkylineProps = { horizon: readonly HorizonPoint[]; frame: SkyFrame };

/** The site's horizon and the ground before it, as sheets of cut paper. */
export function Skyline({ horizon, frame }: SkylineProps) {
  const { sheets, edges } = useMemo(
    () => skylineGeometry(horizon, twilightColours(frame.sun.trueAltitudeDeg)),
    [horizon, frame],
  );
  useEffect(
    () => () => {
      sheets.dispose();
      edges.dispose();
    },
    [sheets, edges],
  );
  return (
    <>
      <mesh geometry={sheets} renderOrder={drawOrder.skyline} frustumCulled={false}>
        {/* Not blended, yet painted in its turn among what is: hence 'transparent'. */}
        <shaderMaterial {...look} transparent blending={0 /* NoBlending */} />
      </mesh>
      <mesh geometry={edges} renderOrder={drawOrder.skylineEdges} frustumCulled={false}>
        <shaderMaterial {...look} transparent />
      </mesh>
    </>
  );
}
