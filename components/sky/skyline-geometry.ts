import { BufferAttribute, BufferGeometry } from 'three';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import type { HorizonPoint } from '@/lib/pointing/scenario';
import { scenePoint } from './to-scene';
import type { Rgb, TwilightColours } from './twilight-colours';

type Rgba = readonly [number, number, number, number];
/** Altitude in degrees at an azimuth. */
type Edge = (azimuthDeg: number) => number;
type Strip = { upper: Edge; lower: Edge; upperColour: Rgba; lowerColour: Rgba };

/** About a pixel: without multisampling, the cut edges are softened by hand. */
const featherDeg = 0.11;
const rimDeg = 0.16;
const shadowDeg = 1.1;

const shade = (colour: Rgb, towards: Rgb, share: number, alpha = 1): Rgba => [
  colour[0] + (towards[0] - colour[0]) * share,
  colour[1] + (towards[1] - colour[1]) * share,
  colour[2] + (towards[2] - colour[2]) * share,
  alpha,
];

/** Low swells, the same every time: sums of whole waves, so that the circle closes. */
const swell = (azimuthDeg: number, phase: number): number => {
  const turn = (azimuthDeg * Math.PI) / 180;
  return (
    Math.sin(turn * 3 + phase) * 0.5 +
    Math.sin(turn * 7 + phase * 2.3) * 0.3 +
    Math.sin(turn * 17 + phase * 4.1) * 0.2
  );
};

/** The shadow that a sheet throws on the sheet behind it. The sky is too far away to take one. */
const shadowOf = (top: Edge): Strip => ({
  upper: (a) => top(a) + shadowDeg,
  lower: top,
  upperColour: [0, 0, 0, 0],
  lowerColour: [0, 0, 0, 0.34],
});

/** One sheet of paper: a light cut edge, then the sheet itself. */
function sheet(top: Edge, bottom: Edge, face: Rgba, foot: Rgba, rim: Rgba): Strip[] {
  const clear: Rgba = [rim[0], rim[1], rim[2], 0];
  return [
    { upper: (a) => top(a) + featherDeg, lower: top, upperColour: clear, lowerColour: rim },
    { upper: top, lower: (a) => top(a) - rimDeg, upperColour: rim, lowerColour: face },
    { upper: (a) => top(a) - rimDeg, lower: bottom, upperColour: face, lowerColour: foot },
  ];
}

/** The strips from the back to the front: the skyline itself and two sheets of ground before it. */
function strips(horizon: readonly HorizonPoint[], colours: TwilightColours): Strip[] {
  const { ground, horizon: haze } = colours;
  const skyline: Edge = (a) => horizonAltitudeDeg(horizon, a);
  const inner: Edge = (a) =>
    Math.min(skyline(a) - 0.7, skyline(a) * 0.5 - 0.6 + 0.7 * swell(a, 1.2));
  const near: Edge = (a) => -4.2 + 0.9 * swell(a, 4.4);
  const feet: Edge = () => -89.9;
  return [
    ...sheet(
      skyline,
      (a) => inner(a) - 0.1,
      shade(ground, haze, 0.4),
      shade(ground, haze, 0.5),
      shade(ground, haze, 0.8),
    ),
    shadowOf(inner),
    ...sheet(
      inner,
      (a) => near(a) - 0.1,
      shade(ground, haze, 0.22),
      shade(ground, haze, 0.3),
      shade(ground, haze, 0.5),
    ),
    shadowOf(near),
    ...sheet(
      near,
      feet,
      shade(ground, haze, 0.1),
      shade(ground, [0, 0, 0], 0.4),
      shade(ground, haze, 0.34),
    ),
  ];
}

/** Strips as one mesh with a colour a vertex. */
function stripMesh(parts: readonly Strip[], azimuths: readonly number[]): BufferGeometry {
  const position: number[] = [];
  const colour: number[] = [];
  const index: number[] = [];
  for (const strip of parts) {
    const start = position.length / 3;
    for (const azimuth of azimuths) {
      position.push(
        ...scenePoint(azimuth, strip.upper(azimuth)),
        ...scenePoint(azimuth, strip.lower(azimuth)),
      );
      colour.push(...strip.upperColour, ...strip.lowerColour);
    }
    for (let i = 0; i < azimuths.length - 1; i += 1) {
      const corner = start + i * 2;
      index.push(corner, corner + 1, corner + 2, corner + 2, corner + 1, corner + 3);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  geometry.setAttribute('tone', new BufferAttribute(new Float32Array(colour), 4));
  geometry.setIndex(index);
  return geometry;
}

/**
 * The sheets of paper, and apart from them the soft edges and shadows: only these few need blending,
 * which is dear without a graphics card.
 */
export function skylineGeometry(
  horizon: readonly HorizonPoint[],
  colours: TwilightColours,
): { sheets: BufferGeometry; edges: BufferGeometry } {
  const azimuths = [
    ...new Set([...Array(361).keys(), ...horizon.map((point) => point.azimuthDeg)]),
  ].sort((a, b) => a - b);
  const all = strips(horizon, colours);
  const solid = (strip: Strip): boolean => strip.upperColour[3] === 1 && strip.lowerColour[3] === 1;
  return {
    sheets: stripMesh(all.filter(solid), azimuths),
    edges: stripMesh(
      all.filter((strip) => !solid(strip)),
      azimuths,
    ),
  };
}
