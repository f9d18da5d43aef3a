import { windOf } from '../../wording/compass-points';
import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** The name of a direction by its eighth of a circle from north. */
export const wind = (eighth: number): string => windOf(45 * eighth);

const centre = { x: 160, y: 150 };
/** A place on the plan: so many eighths from north, so far from the middle. */
export const onCircle = (eighth: number, r: number) => ({
  x: Math.round(centre.x + r * Math.sin((eighth * Math.PI) / 4)),
  y: Math.round(centre.y - r * Math.cos((eighth * Math.PI) / 4)),
});

/** The stand from above, north up, with an arrow to its high side. */
export function planOf(high: number): ItemDrawing {
  const letters = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];
  const tip = onCircle(high, 62);
  const behind = onCircle(high + 4, 34);
  const [left, right] = [onCircle(high - 0.35, 44), onCircle(high + 0.35, 44)];
  return {
    width: 320,
    height: 300,
    alternative: `A stand from straight above, north at the top and east on the right. An arrow on its head points to the side that stands high: ${wind(high)}.`,
    shapes: [
      { kind: 'circle', cx: centre.x, cy: centre.y, r: 108, stroke: 'strong', width: 1.5 },
      { kind: 'circle', cx: centre.x, cy: centre.y, r: 70, fill: 'sunken', stroke: 'strong' },
      {
        kind: 'line',
        x1: centre.x,
        y1: centre.y,
        x2: tip.x,
        y2: tip.y,
        stroke: 'accent',
        width: 5,
      },
      {
        kind: 'path',
        d: `M${String(tip.x)} ${String(tip.y)} L${String(left.x)} ${String(left.y)} L${String(right.x)} ${String(right.y)} Z`,
        fill: 'accent',
      },
      {
        // Behind the arrow, whichever way it points.
        kind: 'text',
        x: behind.x,
        y: behind.y + 5,
        text: 'high side',
        size: 13,
        tone: 'ink',
        anchor: 'middle',
      },
      ...letters.map((text, eighth): Shape => {
        const at = onCircle(eighth, 134);
        return {
          kind: 'text',
          x: at.x,
          y: at.y + 5,
          text,
          size: 14,
          tone: 'soft',
          anchor: 'middle',
          bold: true,
        };
      }),
    ],
  };
}
