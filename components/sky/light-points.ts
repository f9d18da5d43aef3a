import { BufferAttribute, BufferGeometry } from 'three';
import type { SkyLight } from './sky-lights';
import { scenePoint } from './to-scene';
import { starTint } from './twilight-colours';

/**
 * Diameter in CSS pixels at which a light is drawn. Brightness is told by size and by clarity
 * together; the scale is steeper than the eye's own so that half a magnitude can be told apart.
 */
function lightDiameterPx(seenAs: number): number {
  return Math.min(19, 2.2 + 1.2 * Math.max(0, 5.3 - seenAs) ** 1.36);
}

/** One vertex a light: place, tint, diameter, clarity, and a phase of its own for twinkling. */
export function lightGeometry(lights: readonly SkyLight[]): BufferGeometry {
  const position = new Float32Array(lights.length * 3);
  const tint = new Float32Array(lights.length * 3);
  const look = new Float32Array(lights.length * 4);
  lights.forEach((light, index) => {
    position.set(scenePoint(light.azimuthDeg, light.altitudeDeg), index * 3);
    tint.set(starTint(light.colourIndex), index * 3);
    // Low stars are seen through more air and twinkle more.
    const unrest = light.twinkles ? 0.25 + 0.75 * Math.exp(-light.altitudeDeg / 28) : 0;
    look.set(
      [lightDiameterPx(light.seenAs), light.clarity, unrest, (index * 2.399963) % 6.2832],
      index * 4,
    );
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(position, 3));
  geometry.setAttribute('tint', new BufferAttribute(tint, 3));
  geometry.setAttribute('look', new BufferAttribute(look, 4));
  return geometry;
}

export const lightVertexShader = /* glsl */ `
  attribute vec3 tint;
  attribute vec4 look;
  uniform float pixelRatio, zoom, seconds, twinkling;
  varying vec3 colour;
  varying float strength;
  varying float core;
  varying float edge;
  void main() {
    float flicker = sin(seconds * 11.0 + look.w) * 0.6 + sin(seconds * 17.3 + look.w * 3.1) * 0.4;
    float unrest = 1.0 + flicker * look.z * twinkling * 0.55;
    float diameter = look.x * zoom;
    // The sprite is wider than the star's own disc, to hold its halo.
    float spread = 2.6 + 0.09 * diameter;
    gl_PointSize = diameter * spread * pixelRatio;
    core = 0.9 / spread;
    edge = clamp(1.5 / (diameter * spread), 0.02, 0.3);
    colour = tint;
    strength = (0.3 + 0.7 * look.y) * unrest;
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`;

export const lightFragmentShader = /* glsl */ `
  varying vec3 colour;
  varying float strength;
  varying float core;
  varying float edge;
  void main() {
    float d = length(gl_PointCoord - 0.5) * 2.0;
    if (d > 1.0) discard;
    float disc = 1.0 - smoothstep(core - edge, core + edge, d);
    float outside = 1.0 - d;
    float halo = outside * outside * outside * 0.42;
    // White hot in the middle, the star's own tint towards the rim and in the halo.
    vec3 light = mix(colour, vec3(1.0), disc * (1.0 - smoothstep(0.0, core, d)) * 0.6);
    gl_FragColor = vec4(light, min(1.0, (disc + halo) * strength));
  }
`;
