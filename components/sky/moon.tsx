'use client';

import { useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import { degreesToRadians } from '@/lib/units/angle';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { Vector3 } from '@/lib/units/vector';
import { cross, dot, normalise } from '@/lib/units/vector';
import { drawOrder } from './draw-order';
import { sceneDirection, skyRadius } from './to-scene';

/** The Moon is half a degree across; drawn this much larger so that its phase can be seen. */
const enlargement = 3;
const discRadiusDeg = 0.26 * enlargement;
const glareRadiusDeg = 9;

const vertexShader = /* glsl */ `
  attribute vec2 corner;
  varying vec2 at;
  void main() {
    at = corner;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

const fragmentShader = /* glsl */ `
  uniform vec3 light;
  uniform float discShare, brightness, edge;
  varying vec2 at;
  void main() {
    float d = length(at);
    float glare = pow(max(0.0, 1.0 - d), 3.0) * 0.34 * brightness;
    vec2 onDisc = at / discShare;
    float r = length(onDisc);
    float disc = 1.0 - smoothstep(1.0 - edge, 1.0, r);
    float z = sqrt(max(0.0, 1.0 - r * r));
    float lit = smoothstep(-0.02, 0.10, dot(vec3(onDisc, z), light));
    vec3 face = mix(vec3(0.20, 0.23, 0.30), vec3(0.97, 0.94, 0.86), lit);
    vec3 colour = mix(vec3(0.80, 0.84, 0.92), face, disc);
    gl_FragColor = vec4(colour, max(glare, disc * (0.55 + 0.45 * lit)));
  }
`;

/** Where sunlight falls on the disc seen from here: x to the right, y up, z towards the viewer. */
function lightOnDisc(frame: SkyFrame, right: Vector3, up: Vector3): Vector3 {
  const sun = sceneDirection(frame.sun.azimuthDeg, frame.sun.altitudeDeg);
  const across = Math.hypot(dot(sun, right), dot(sun, up)) || 1;
  // Illuminated fraction k = (1 + cos i)/2 with i the phase angle: Meeus ch. 48.
  const cosPhase = 2 * frame.moon.illuminatedFraction - 1;
  const sinPhase = Math.sqrt(Math.max(0, 1 - cosPhase * cosPhase));
  return [(dot(sun, right) / across) * sinPhase, (dot(sun, up) / across) * sinPhase, cosPhase];
}

function moonGeometry(centre: Vector3, right: Vector3, up: Vector3): BufferGeometry {
  const half = skyRadius * Math.tan(degreesToRadians(glareRadiusDeg));
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const position = new Float32Array(12);
  corners.forEach(([x, y], index) => {
    for (const axis of [0, 1, 2] as const) {
      position[index * 3 + axis] =
        centre[axis] * skyRadius + (right[axis] * x + up[axis] * y) * half;
    }
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(position, 3));
  geometry.setAttribute('corner', new BufferAttribute(new Float32Array(corners.flat()), 2));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  return geometry;
}

/** The Moon with its phase and its glare, above the horizon only. */
export function Moon({ frame }: { frame: SkyFrame }) {
  const { geometry, uniforms } = useMemo(() => {
    const centre = sceneDirection(frame.moon.azimuthDeg, frame.moon.altitudeDeg);
    const right = normalise(cross(centre, [0, 1, 1e-6]));
    const up = cross(right, centre);
    return {
      geometry: moonGeometry(centre, right, up),
      uniforms: {
        light: { value: lightOnDisc(frame, right, up) },
        discShare: { value: discRadiusDeg / glareRadiusDeg },
        brightness: { value: 0.25 + 0.75 * frame.moon.illuminatedFraction },
        edge: { value: 0.09 },
      },
    };
  }, [frame]);
  if (frame.moon.altitudeDeg < -2) return null;
  return (
    <mesh geometry={geometry} renderOrder={drawOrder.moon} frustumCulled={false}>
      <shaderMaterial
        key={frame.instant}
        uniforms={uniforms}
        vertexShader={vertexShader}
        fragmentShader={fragmentShader}
        transparent
        depthTest={false}
        depthWrite={false}
      />
    </mesh>
  );
}
