import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** Middle and radius of the ring in a drawing of 320 by 240. */
export const ring = { x: 160, y: 120, radius: 105 } as const;

type Light = { right: number; up: number; size: number; named?: string };

/** A look through an eyepiece; places are in radii of the field, from the middle. */
export function viewDrawing(
  alternative: string,
  lights: readonly Light[],
  more: readonly Shape[] = [],
): ItemDrawing {
  const { x, y, radius } = ring;
  return {
    width: 320,
    height: 240,
    alternative,
    shapes: [
      { kind: 'circle', cx: x, cy: y, r: radius, fill: 'sky', stroke: 'strong', width: 3 },
      { kind: 'line', x1: x - 5, y1: y, x2: x + 5, y2: y, stroke: 'sky-line' },
      { kind: 'line', x1: x, y1: y - 5, x2: x, y2: y + 5, stroke: 'sky-line' },
      ...lights.flatMap((light): Shape[] => [
        {
          kind: 'circle',
          cx: x + radius * light.right,
          cy: y - radius * light.up,
          r: Math.max(2, radius * light.size),
          fill: 'sky-lamp',
        },
        ...(light.named === undefined
          ? []
          : [
              {
                kind: 'text' as const,
                x: x + radius * light.right,
                y: y - radius * light.up - 8 - radius * light.size,
                text: light.named,
                tone: 'on-sky' as const,
                anchor: 'middle' as const,
              },
            ]),
      ]),
      ...more,
    ],
  };
}
