'use client';

import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { Points, ShaderMaterial } from 'three';
import { BufferAttribute, BufferGeometry } from 'three';
import { drawOrder } from './draw-order';
import type { SkyMark } from './sky-mark';
import type { SkyView } from './sky-view';
import { scenePoint } from './to-scene';

const vertexShader = /* glsl */ `
  attribute float style;
  uniform float pixelRatio;
  varying float drawn;
  varying float size;
  void main() {
    drawn = style;
    // Stars are drawn larger in a narrow field: the smallest ring grows with them to stay outside.
    float narrow = max(projectionMatrix[0][0], projectionMatrix[1][1]) / 1.9;
    float smallest = 22.0 * clamp(sqrt(narrow), 1.0, 1.9);
    size = (style > 3.5 ? smallest : style > 1.5 ? 46.0 : 36.0) * pixelRatio;
    gl_PointSize = size;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

// Style 0: pointed at. 1: selected. 2: kept. 3: proposed by the mount or given. 4: asked about: one
// small ring, nine pixels from the star, for its neighbours are what is looked for. On a phone 390
// pixels wide two degrees are twelve pixels at the field the sky opens with.
const fragmentShader = /* glsl */ `
  varying float drawn;
  varying float size;
  void main() {
    vec2 at = (gl_PointCoord - 0.5) * size;
    float r = length(at);
    float outer = size * 0.5 - 2.0;
    float ring = 1.0 - smoothstep(0.6, 1.6, abs(r - outer) - 0.4);
    if (drawn > 0.5 && drawn < 2.5) ring = max(ring, 1.0 - smoothstep(0.6, 1.5, abs(r - outer + 5.0) - 0.2));
    if (drawn > 2.5 && drawn < 3.5) ring *= step(0.0, sin(atan(at.y, at.x) * 8.0));
    if (drawn > 0.5 && drawn < 1.5) ring *= step(0.35, abs(sin(atan(at.y, at.x) * 2.0)));
    vec3 colour = drawn < 0.5 ? vec3(0.95, 0.93, 0.88) : vec3(1.0, 0.78, 0.42);
    gl_FragColor = vec4(colour, ring * (drawn < 0.5 ? 0.75 : 0.95));
  }
`;

const styleOf: Readonly<Record<SkyMark['kind'], number>> = {
  selected: 1,
  kept: 2,
  proposed: 3,
  asked: 4,
};

const makeUniforms = () => ({ pixelRatio: { value: 1 } });

type RingsProps = { marks: readonly SkyMark[]; view: SkyView };

/** Rings round what is pointed at and what is marked; told apart by shape and size, not colour. */
export function Rings({ marks, view }: RingsProps) {
  const points = useRef<Points>(null);
  const material = useRef<ShaderMaterial>(null);
  const uniforms = useMemo(() => makeUniforms(), []);
  // Vertex 0 is the ring that follows the pointer; it moves without a render.
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    const position = new Float32Array((marks.length + 1) * 3);
    marks.forEach((mark, index) => {
      position.set(scenePoint(mark.azimuthDeg, mark.altitudeDeg), (index + 1) * 3);
    });
    made.setAttribute('position', new BufferAttribute(position, 3));
    made.setAttribute(
      'style',
      new BufferAttribute(new Float32Array([0, ...marks.map((mark) => styleOf[mark.kind])]), 1),
    );
    return made;
  }, [marks]);
  useEffect(
    () => () => {
      geometry.dispose();
    },
    [geometry],
  );
  useFrame(({ gl }) => {
    const uniform = material.current?.uniforms.pixelRatio;
    if (uniform !== undefined) uniform.value = gl.getPixelRatio();
    const position = points.current?.geometry.getAttribute('position');
    if (position === undefined) return;
    const at = view.pointed;
    // Straight down is under the ground and out of sight.
    if (at === null) position.setXYZ(0, 0, -1000, 0);
    else position.setXYZ(0, at.sceneX, at.sceneY, at.sceneZ);
    position.needsUpdate = true;
  });
  return (
    <points ref={points} geometry={geometry} renderOrder={drawOrder.rings} frustumCulled={false}>
      <shaderMaterial
        ref={material}
        uniforms={uniforms}
        vertexShader={vertexShader}
        fragmentShader={fragmentShader}
        transparent
        depthTest={false}
        depthWrite={false}
      />
    </points>
  );
}
