'use client';

import { useMemo } from 'react';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { drawOrder } from './draw-order';
import { sceneDirection, skyRadius } from './to-scene';
import { twilightColours } from './twilight-colours';

// Colours are worked out at the vertices and only dithered per pixel: full-screen shading is what
// an old laptop without a graphics card has least of.
const vertexShader = /* glsl */ `
  uniform vec3 zenith, middle, horizon, glow, sunDirection, moonDirection;
  uniform float moonLight;
  varying vec3 colour;
  void main() {
    vec3 u = normalize(position);
    float height = clamp(u.y, 0.0, 1.0);
    vec3 sky = mix(horizon, middle, smoothstep(0.0, 0.34, height));
    sky = mix(sky, zenith, smoothstep(0.22, 0.95, height));
    vec2 side = normalize(sunDirection.xz);
    float towardSun = 0.5 + 0.5 * dot(normalize(u.xz + vec2(1e-5)), side);
    float low = exp(-height * 5.5);
    sky = mix(sky, glow, low * pow(towardSun, 3.0) * 0.85);
    float towardMoon = max(0.0, dot(u, moonDirection));
    sky += vec3(0.55, 0.62, 0.75) * moonLight * (0.05 + 0.12 * pow(towardMoon, 6.0));
    colour = sky;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

const fragmentShader = /* glsl */ `
  varying vec3 colour;
  void main() {
    // Half a step of noise breaks the bands that eight bits would show, and reads as paper.
    float grain = fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
    gl_FragColor = vec4(colour + (grain - 0.5) / 110.0, 1.0);
  }
`;

/** The painted sky: dark overhead, lighter low down, warm where the Sun has gone. */
export function SkyDome({ frame }: { frame: SkyFrame }) {
  const uniforms = useMemo(() => {
    const colours = twilightColours(frame.sun.trueAltitudeDeg);
    const { moon } = frame;
    return {
      zenith: { value: colours.zenith },
      middle: { value: colours.middle },
      horizon: { value: colours.horizon },
      glow: { value: colours.glow },
      sunDirection: { value: sceneDirection(frame.sun.azimuthDeg, 0) },
      moonDirection: { value: sceneDirection(moon.azimuthDeg, moon.altitudeDeg) },
      moonLight: { value: moon.altitudeDeg > 0 ? moon.illuminatedFraction ** 2 : 0 },
    };
  }, [frame]);
  return (
    <mesh renderOrder={drawOrder.dome} frustumCulled={false}>
      {/* Down to a little below the horizon: the ground hides the rest. */}
      <sphereGeometry args={[skyRadius, 64, 40, 0, Math.PI * 2, 0, Math.PI * 0.52]} />
      <shaderMaterial
        key={frame.instant}
        side={1 /* BackSide */}
        depthTest={false}
        depthWrite={false}
        uniforms={uniforms}
        vertexShader={vertexShader}
        fragmentShader={fragmentShader}
      />
    </mesh>
  );
}
