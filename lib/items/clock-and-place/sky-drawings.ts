import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { boxRound, placeNames } from '../place-names';
import type { Position } from './drawn-sky';

/** The whole sky as a disc: zenith in the middle, horizon as rim, altitude evenly spaced. */
const radius = 128;
const middle = 160;
const discSize = 2 * middle;

/** North is up and east on the left, as one sees it lying on the back with the head to the north. */
export function onDisc({ azimuthDeg, altitudeDeg }: Position): { x: number; y: number } {
  const fromZenith = ((90 - altitudeDeg) / 90) * radius;
  const azimuth = (azimuthDeg * Math.PI) / 180;
  return {
    x: round(middle - fromZenith * Math.sin(azimuth)),
    y: round(middle - fromZenith * Math.cos(azimuth)),
  };
}

const round = (value: number): number => Math.round(10 * value) / 10;

/** Horizon, rings at 30° and 60°, the meridian, and the four directions. */
function discGround(): Shape[] {
  const letters = [
    { text: 'N', azimuthDeg: 0 },
    { text: 'E', azimuthDeg: 90 },
    { text: 'S', azimuthDeg: 180 },
    { text: 'W', azimuthDeg: 270 },
  ];
  const c = { cx: middle, cy: middle };
  return [
    { kind: 'circle', ...c, r: radius, fill: 'sky', stroke: 'sky-line', width: 2 },
    ...[30, 60].map((altitudeDeg): Shape => ({
      kind: 'circle',
      ...c,
      r: radius * (1 - altitudeDeg / 90),
      stroke: 'sky-line',
      width: 0.8,
      dashed: true,
    })),
    ...letters.map(({ text, azimuthDeg }): Shape => {
      const { x, y } = onDisc({ azimuthDeg, altitudeDeg: -10 });
      return { kind: 'text', x, y: y + 5, text, anchor: 'middle', bold: true };
    }),
  ];
}

/** A star; its name is placed by the disc that it stands on. */
export function starShape(at: Position, lit = false): Shape {
  const { x, y } = onDisc(at);
  return { kind: 'circle', cx: x, cy: y, r: lit ? 5 : 4, fill: lit ? 'sky-lamp' : 'on-sky' };
}

/** An open ring: where something was or was thought to be. */
export function ringShape(at: Position): Shape {
  const { x, y } = onDisc(at);
  return { kind: 'circle', cx: x, cy: y, r: 8, stroke: 'sky-lamp', width: 2 };
}

/** A way over the sky, step by step. */
export function pathShape(steps: readonly Position[]): Shape {
  const points = steps.filter(({ altitudeDeg }) => altitudeDeg > -1).map(onDisc);
  const d = points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${String(x)} ${String(y)}`).join('');
  return { kind: 'path', d, stroke: 'sky-lamp', width: 2, dashed: true };
}

type Named = { at: Position; name: string };
/** Room for a ring to point with, over a ring or a star of the drawing. */
const roomToPoint = 15;

/** The disc with what is on it; each name beside its star, where it hides nothing. */
export function discDrawing(
  shapes: readonly Shape[],
  { alternative, names = [] }: { alternative: string; names?: readonly Named[] },
): ItemDrawing {
  const places = names.map(({ at, name }) => ({ name, r: 5, ...onDisc(at) }));
  const dots = shapes.flatMap((shape) => (shape.kind === 'circle' ? [shape] : []));
  return {
    width: discSize,
    height: discSize,
    alternative,
    shapes: [
      ...discGround(),
      ...shapes,
      ...placeNames(places, {
        look: { size: 13, tone: 'on-sky' },
        keepFree: dots.map(({ cx, cy, r }) =>
          boxRound({ x: cx, y: cy }, r > 5 ? roomToPoint : r + 1),
        ),
        within: boxRound({ x: middle, y: middle }, radius),
      }),
    ],
  };
}

/** Where a star goes from one time to another, with its place then as a ring and now as a star. */
export function journeyDrawing(
  way: (share: number) => Position,
  { name, alternative }: { name: string; alternative: string },
): ItemDrawing {
  const steps = Array.from({ length: 13 }, (_, i) => way(i / 12));
  const [first, last] = [way(0), way(1)];
  return discDrawing(
    [
      pathShape(steps),
      ...(first.altitudeDeg > 0 ? [ringShape(first)] : []),
      ...(last.altitudeDeg > 0 ? [starShape(last, true)] : []),
    ],
    { alternative, names: last.altitudeDeg > 0 ? [{ at: last, name }] : [] },
  );
}
