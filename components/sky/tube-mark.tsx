'use client';

import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { Group, Points, ShaderMaterial } from 'three';
import { BufferAttribute, BufferGeometry } from 'three';
import type { Vector3 } from '@/lib/units/vector';
import { drawOrder } from './draw-order';
import { scenePoint, skyRadius } from './to-scene';

/** Where tube and dot point now: unit vectors (east, north, up), written into by their owner. */
export type TubeAim = { readonly tube: Vector3; readonly dot: Vector3 };

const stemVertex = /* glsl */ `
  attribute vec2 place;
  uniform float top;
  varying vec2 at;
  varying float end;
  void main() {
    at = place;
    end = top;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

// x: −1 to 1 across, y: degrees up. A pale stem, and a longer mark every ten degrees.
const stemFragment = /* glsl */ `
  varying vec2 at;
  varying float end;
  void main() {
    if (at.y > end) discard;
    float across = abs(at.x);
    float stem = 1.0 - smoothstep(0.10, 0.22, across);
    float tens = abs(mod(at.y + 5.0, 10.0) - 5.0);
    float mark = (1.0 - smoothstep(0.10, 0.24, tens)) * (1.0 - smoothstep(0.86, 1.0, across));
    float fives = abs(mod(at.y + 2.5, 5.0) - 2.5);
    float small = (1.0 - smoothstep(0.08, 0.2, fives)) * (1.0 - smoothstep(0.44, 0.56, across));
    float strength = max(stem * 0.55, max(mark, small) * 0.7);
    strength *= smoothstep(-1.0, 4.0, at.y) * (1.0 - 0.75 * smoothstep(end - 1.2, end, at.y));
    gl_FragColor = vec4(0.93, 0.90, 0.82, strength);
  }
`;

const dotVertex = /* glsl */ `
  uniform float pixelRatio;
  void main() {
    gl_PointSize = 26.0 * pixelRatio;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

const dotFragment = /* glsl */ `
  void main() {
    float d = length(gl_PointCoord - 0.5) * 2.0;
    if (d > 1.0) discard;
    float core = 1.0 - smoothstep(0.14, 0.24, d);
    float glow = pow(1.0 - d, 3.0) * 0.55;
    float ring = (1.0 - smoothstep(0.02, 0.07, abs(d - 0.86))) * 0.7;
    vec3 colour = mix(vec3(1.0, 0.24, 0.16), vec3(1.0, 0.62, 0.5), core);
    gl_FragColor = vec4(colour, max(max(core, glow), ring));
  }
`;

/** The stem is so much shorter than the tube is high: it leads there and hides nothing. */
const stemEndsBelowDeg = 1.6;
const stemHalfWidthDeg = 1.1;

/** A strip up the north of the sky; the group turns it to where the tube faces. */
function stemGeometry(): BufferGeometry {
  const position: number[] = [];
  const place: number[] = [];
  const index: number[] = [];
  for (let altitude = -2; altitude <= 89; altitude += 1) {
    // As wide at any height: azimuths narrow upwards.
    const half = stemHalfWidthDeg / Math.max(0.05, Math.cos((altitude * Math.PI) / 180));
    position.push(...scenePoint(-half, altitude), ...scenePoint(half, altitude));
    place.push(-1, altitude, 1, altitude);
    const first = (altitude + 2) * 2;
    if (altitude < 89) index.push(first, first + 1, first + 2, first + 2, first + 1, first + 3);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  geometry.setAttribute('place', new BufferAttribute(new Float32Array(place), 2));
  geometry.setIndex(index);
  return geometry;
}

const makeStemUniforms = () => ({ top: { value: 0 } });
const makeDotUniforms = () => ({ pixelRatio: { value: 1 } });

/** Which way the telescope points: a stem up from the horizon, and the finder's red dot. */
export function TubeMark({ aim }: { aim: TubeAim }) {
  const stem = useRef<Group>(null);
  const stemMaterial = useRef<ShaderMaterial>(null);
  const dot = useRef<Points>(null);
  const dotMaterial = useRef<ShaderMaterial>(null);
  const stemUniforms = useMemo(() => makeStemUniforms(), []);
  const dotUniforms = useMemo(() => makeDotUniforms(), []);
  const strip = useMemo(() => stemGeometry(), []);
  const point = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(new Float32Array(3), 3));
    return made;
  }, []);
  useEffect(
    () => () => {
      strip.dispose();
      point.dispose();
    },
    [strip, point],
  );
  useFrame(({ gl }) => {
    const [east, north, up] = aim.tube;
    if (stem.current !== null) stem.current.rotation.y = -Math.atan2(east, north);
    const top = stemMaterial.current?.uniforms.top;
    const altitudeDeg = (Math.atan2(up, Math.hypot(east, north)) * 180) / Math.PI;
    if (top !== undefined) top.value = altitudeDeg - stemEndsBelowDeg;
    const ratio = dotMaterial.current?.uniforms.pixelRatio;
    if (ratio !== undefined) ratio.value = gl.getPixelRatio();
    const place = dot.current?.geometry.getAttribute('position');
    if (place === undefined) return;
    const [dotEast, dotNorth, dotUp] = aim.dot;
    // As `toScene`, which would make an array of it.
    place.setXYZ(0, dotEast * skyRadius, dotUp * skyRadius, -dotNorth * skyRadius);
    place.needsUpdate = true;
  });
  return (
    <>
      <group ref={stem}>
        <mesh geometry={strip} renderOrder={drawOrder.tube} frustumCulled={false}>
          <shaderMaterial
            ref={stemMaterial}
            uniforms={stemUniforms}
            vertexShader={stemVertex}
            fragmentShader={stemFragment}
            transparent
            side={2 /* DoubleSide */}
            depthTest={false}
            depthWrite={false}
          />
        </mesh>
      </group>
      <points ref={dot} geometry={point} renderOrder={drawOrder.dot} frustumCulled={false}>
        <shaderMaterial
          ref={dotMaterial}
          uniforms={dotUniforms}
          vertexShader={dotVertex}
          fragmentShader={dotFragment}
          transparent
          depthTest={false}
          depthWrite={false}
        />
      </points>
    </>
  );
}
