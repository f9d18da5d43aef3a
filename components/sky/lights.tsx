'use client';

import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { ShaderMaterial } from 'three';
import { lightFragmentShader, lightGeometry, lightVertexShader } from './light-points';
import type { SkyLight } from './sky-lights';
import type { SkyView } from './sky-view';

/** How long the sky is let twinkle after a light was picked, before it rests again. */
const twinkleSeconds = 2.6;

const makeUniforms = () => ({
  pixelRatio: { value: 1 },
  zoom: { value: 1 },
  seconds: { value: 0 },
  twinkling: { value: 0 },
});

type LightsProps = {
  lights: readonly SkyLight[];
  view: SkyView;
  /** Anything that changes when the learner looks closely at a light. */
  lookedAt: string | null;
  renderOrder: number;
};

/** All lights of a kind in one draw: stars, or planets, which only differ in not twinkling. */
export function Lights({ lights, view, lookedAt, renderOrder }: LightsProps) {
  const material = useRef<ShaderMaterial>(null);
  const twinkleLeft = useRef(0);
  const seconds = useRef(0);
  const invalidate = useThree((state) => state.invalidate);
  const geometry = useMemo(() => lightGeometry(lights), [lights]);
  const uniforms = useMemo(() => makeUniforms(), []);

  useEffect(
    () => () => {
      geometry.dispose();
    },
    [geometry],
  );
  useEffect(() => {
    if (lookedAt === null || view.reducedMotion) return;
    twinkleLeft.current = twinkleSeconds;
    invalidate();
  }, [lookedAt, view, invalidate]);

  useFrame(({ gl }, delta) => {
    const drawn = material.current?.uniforms;
    if (drawn?.pixelRatio === undefined || drawn.zoom === undefined) return;
    drawn.pixelRatio.value = gl.getPixelRatio();
    drawn.zoom.value = Math.min(1.9, Math.max(0.85, Math.sqrt(55 / view.fieldDeg)));
    if (drawn.twinkling === undefined || drawn.seconds === undefined) return;
    if (twinkleLeft.current > 0) {
      const step = Math.min(delta, 0.1);
      twinkleLeft.current -= step;
      seconds.current += step;
      drawn.seconds.value = seconds.current;
      drawn.twinkling.value = Math.max(0, Math.min(1, twinkleLeft.current / 0.6));
      invalidate();
    } else {
      drawn.twinkling.value = 0;
    }
  });

  return (
    <points geometry={geometry} renderOrder={renderOrder} frustumCulled={false}>
      <shaderMaterial
        ref={material}
        uniforms={uniforms}
        vertexShader={lightVertexShader}
        fragmentShader={lightFragmentShader}
        transparent
        depthTest={false}
        depthWrite={false}
        blending={2 /* AdditiveBlending */}
      />
    </points>
  );
}
