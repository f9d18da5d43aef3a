import type { Spot } from '../../optics/light-path';
import type { Shape } from '../../drawings/drawing';
import { drawTube, type DrawnTube } from '../../drawings/tube-drawing';

export type OutsidePart = 'finder' | 'bar' | 'eyepiece' | 'cap';

/** The tube closed, capped in front, with its finder and the bar below; places as in the cut-open one. */
export function drawOutside(tube: DrawnTube, facing: 'left' | 'right', eyepieceAt: Spot) {
  const { width, height, place } = drawTube(tube, { facing, rays: [] });
  const half = tube.diameterMm / 2;
  const finderAt: Spot = {
    xMm: tube.lengthMm * (tube.tubeType === 'reflector' ? 0.42 : 0.8),
    yMm: half + 22,
  };
  const box = (leftMm: number, rightMm: number, topMm: number, bottomMm: number) => {
    const [a, b] = [place({ xMm: leftMm, yMm: topMm }), place({ xMm: rightMm, yMm: bottomMm })];
    return {
      x: Math.min(a.x, b.x),
      y: Math.min(a.y, b.y),
      w: Math.abs(a.x - b.x),
      h: Math.abs(a.y - b.y),
    };
  };
  const ink = { stroke: 'land', width: 1.5 } as const;
  const [pipe, eyepiece, back] = [
    place({ xMm: eyepieceAt.xMm, yMm: half - 6 }),
    place(eyepieceAt),
    place({ xMm: tube.lengthMm + 60, yMm: 0 }),
  ];
  const fromBack = eyepieceAt.xMm > tube.lengthMm;
  const through = fromBack
    ? [place({ xMm: tube.lengthMm, yMm: 0 }), back, eyepiece]
    : [pipe, eyepiece];
  const shapes: Shape[] = [
    { kind: 'rect', x: 0, y: 0, w: width, h: height, fill: 'sky' },
    {
      kind: 'path',
      d: `M${through.map(({ x, y }) => `${String(x)} ${String(y)}`).join(' L')}`,
      stroke: 'on-sky-soft',
      width: 11,
    },
    { kind: 'rect', ...box(0, tube.lengthMm, half, -half), round: 2, fill: 'on-sky', ...ink },
    { kind: 'rect', ...box(-12, 14, half + 8, -half - 8), round: 3, fill: 'on-sky-soft', ...ink },
    {
      kind: 'rect',
      round: 1,
      fill: 'on-sky-soft',
      ...ink,
      ...box(tube.lengthMm * 0.32, tube.lengthMm * 0.68, -half, -half - 14),
    },
    {
      kind: 'rect',
      round: 2,
      fill: 'on-sky-soft',
      ...ink,
      ...box(finderAt.xMm - 26, finderAt.xMm + 26, half + 14, half),
    },
    {
      kind: 'rect',
      round: 1,
      fill: 'land',
      stroke: 'on-sky',
      width: 1,
      ...box(finderAt.xMm - 24, finderAt.xMm - 14, half + 40, half + 14),
    },
    { kind: 'circle', cx: eyepiece.x, cy: eyepiece.y, r: 8, fill: 'land', stroke: 'on-sky' },
  ];
  const spots: Readonly<Record<OutsidePart, { x: number; y: number }>> = {
    finder: place(finderAt),
    bar: place({ xMm: tube.lengthMm / 2, yMm: -half - 7 }),
    cap: place({ xMm: 0, yMm: -half * 0.4 }),
    eyepiece,
  };
  return { width, height, shapes, spots };
}
