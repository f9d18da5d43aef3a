'use client';

import { useEffect, useMemo } from 'react';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { CloudPatch } from '@/lib/pointing/scenario';
import { cloudGeometry } from './cloud-geometry';
import { drawOrder } from './draw-order';
import { twilightColours } from './twilight-colours';

const vertexShader = /* glsl */ `
  attribute vec2 veil;
  uniform vec3 underside, rim;
  varying vec4 colour;
  void main() {
    colour = vec4(mix(rim, underside, veil.y), veil.x);
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

const fragmentShader = /* glsl */ `
  varying vec4 colour;
  void main() {
    gl_FragColor = colour;
  }
`;

type CloudsProps = { clouds: readonly CloudPatch[]; frame: SkyFrame };

/** Patches of cloud as soft, lumpy discs. */
export function Clouds({ clouds, frame }: CloudsProps) {
  const geometry = useMemo(() => cloudGeometry(clouds), [clouds]);
  const uniforms = useMemo(() => {
    const { horizon, middle } = twilightColours(frame.sun.trueAltitudeDeg);
    return {
      underside: { value: middle.map((part, axis) => part * 0.55 + (horizon[axis] ?? part) * 0.5) },
      rim: { value: horizon.map((part) => Math.min(1, part * 1.12 + 0.03)) },
    };
  }, [frame]);
  useEffect(
    () => () => {
      geometry.dispose();
    },
    [geometry],
  );
  if (clouds.length === 0) return null;
  return (
    <mesh geometry={geometry} renderOrder={drawOrder.clouds} frustumCulled={false}>
      <shaderMaterial
        key={frame.instant}
        uniforms={uniforms}
        vertexShader={vertexShader}
        fragmentShader={fragmentShader}
        transparent
        side={2 /* DoubleSide */}
        depthTest={false}
        depthWrite={false}
      />
    </mesh>
  );
}
