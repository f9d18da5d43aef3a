import type { FieldOffset } from '../../optics/image-orientation';
import type { ItemDrawing, Shape } from '../../drawings/drawing';

type View = { cx: number; cy: number; radius: number };
export const oneView: View = { cx: 160, cy: 122, radius: 108 };

/** A place in the view, in the drawing's units; offsets as they look in the eyepiece. */
export const inView = (
  seen: FieldOffset,
  fieldRadiusArcmin: number,
  view = oneView,
): { x: number; y: number } => ({
  x: round(view.cx + (seen.rightArcmin / fieldRadiusArcmin) * view.radius),
  y: round(view.cy - (seen.upArcmin / fieldRadiusArcmin) * view.radius),
});

const round = (value: number): number => Math.round(value * 10) / 10;

/** The round field with its middle, rings at quarters of the radius, and stars in it. */
export function fieldShapes(
  stars: readonly FieldOffset[],
  fieldRadiusArcmin: number,
  { rings = false, view = oneView }: { rings?: boolean; view?: View } = {},
): Shape[] {
  const { cx, cy, radius } = view;
  const arm = radius > 60 ? 6 : 4;
  return [
    { kind: 'circle', cx, cy, r: radius, fill: 'sky', stroke: 'strong', width: 2 },
    ...(rings ? [0.25, 0.5, 0.75] : []).map((share): Shape => ({
      kind: 'circle',
      cx,
      cy,
      r: round(share * radius),
      stroke: 'sky-line',
      width: 0.75,
      dashed: true,
    })),
    { kind: 'line', x1: cx - arm, y1: cy, x2: cx + arm, y2: cy, stroke: 'on-sky-soft' },
    { kind: 'line', x1: cx, y1: cy - arm, x2: cx, y2: cy + arm, stroke: 'on-sky-soft' },
    ...stars.map((star): Shape => {
      const { x, y } = inView(star, fieldRadiusArcmin, view);
      return { kind: 'circle', cx: x, cy: y, r: 4, fill: 'sky-lamp' };
    }),
  ];
}

export const eyepieceDrawing = (
  shapes: readonly Shape[],
  alternative: string,
  height = 244,
): ItemDrawing => ({ width: 320, height, alternative, shapes });

/** "right and up", "left": which way something looks off the middle. */
export function wayText({ rightArcmin, upArcmin }: FieldOffset): string {
  const across = rightArcmin > 0 ? 'right' : rightArcmin < 0 ? 'left' : '';
  const along = upArcmin > 0 ? 'up' : upArcmin < 0 ? 'down' : '';
  return [across, along].filter((word) => word !== '').join(' and ');
}
