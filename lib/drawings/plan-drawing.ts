import { feetOf, plumbPoint, stabilityOf, type LoadedStand } from '../assembly/stability';
import type { ItemDrawing, Shape } from './drawing';
import { footName, lineName } from './some-stand';

const [width, height] = [320, 250];
const unitsPerMm = 0.22;
const middle = { x: 160, y: 138 };

export const onPlan = ({ eastMm, northMm }: { eastMm: number; northMm: number }) => ({
  x: Math.round(10 * (middle.x + eastMm * unitsPerMm)) / 10,
  y: Math.round(10 * (middle.y - northMm * unitsPerMm)) / 10,
});

/** Side of one square of the grid, millimetres. */
export const gridMm = 50;

/** The stand from straight above: its feet, the lines between them, and the plumb point as a ring and dot. */
export function planDrawing(
  stand: LoadedStand,
  { grid = false, letters = true, words }: { grid?: boolean; letters?: boolean; words: string },
): ItemDrawing {
  const feet = feetOf(stand).map(onPlan);
  const dot = onPlan(plumbPoint(stand));
  const lines: Shape[] = [];
  if (grid) {
    const step = gridMm * unitsPerMm;
    for (let x = middle.x % step; x < width; x += step)
      lines.push({ kind: 'line', x1: x, y1: 0, x2: x, y2: height, stroke: 'line', width: 0.7 });
    for (let y = middle.y % step; y < height; y += step)
      lines.push({ kind: 'line', x1: 0, y1: y, x2: width, y2: y, stroke: 'line', width: 0.7 });
  }
  return {
    width,
    height,
    alternative: words,
    shapes: [
      ...lines,
      {
        kind: 'path',
        stroke: 'strong',
        width: 2,
        d: `M${feet.map(({ x, y }) => `${String(x)} ${String(y)}`).join(' L')} Z`,
      },
      ...feet.map(({ x, y }): Shape => ({
        kind: 'line',
        x1: middle.x,
        y1: middle.y,
        x2: x,
        y2: y,
        stroke: 'soft',
        width: 4,
      })),
      ...feet.flatMap(({ x, y }, index): Shape[] => [
        { kind: 'circle', cx: x, cy: y, r: 9, fill: 'panel', stroke: 'ink', width: 2 },
        ...(letters ? [letterOn(index, { x, y })] : []),
      ]),
      { kind: 'circle', cx: dot.x, cy: dot.y, r: 8, fill: 'panel', stroke: 'danger', width: 2.5 },
      { kind: 'circle', cx: dot.x, cy: dot.y, r: 3, fill: 'danger' },
    ],
  };
}

const letterOn = (index: number, { x, y }: { x: number; y: number }): Shape => ({
  kind: 'text',
  x,
  y: y + 4.5,
  text: footName(index),
  size: 13,
  anchor: 'middle',
  bold: true,
});

/** Where the plumb point lies, as one would tell it to somebody who does not see the plan. */
export function planInWords(stand: LoadedStand, { letters = true } = {}): string {
  const at = plumbPoint(stand);
  const far = feetOf(stand).map(({ eastMm, northMm }) =>
    Math.round(Math.hypot(eastMm - at.eastMm, northMm - at.northMm) / 10),
  );
  const [one = 0, two = 0] = feetOf(stand).map(({ eastMm, northMm }) =>
    Math.hypot(eastMm, northMm),
  );
  const side = Math.round((Math.sqrt(3) * Math.max(one, two)) / 10);
  if (!letters)
    return `The stand from above: three feet, at the top, lower right and lower left, at the corners of a triangle with sides of ${String(side)} cm. The plumb point, a dot in a ring, lies ${far.map((cm, index) => `${String(cm)} cm from the foot ${footPlaces[index] ?? ''}`).join(', ')}.`;
  return `The stand from above: feet A, B and C at the corners of a triangle with sides of ${String(side)} cm. The plumb point, a dot in a ring, lies ${far.map((cm, index) => `${String(cm)} cm from ${footName(index)}`).join(', ')}.`;
}

const footPlaces = ['at the top', 'at the lower right', 'at the lower left'] as const;

export const outcomeInWords = (stand: LoadedStand): string => {
  const { marginMm, overFeet } = stabilityOf(stand);
  const mm = String(Math.round(Math.abs(marginMm)));
  return marginMm > 0
    ? `The dot lies inside the triangle, ${mm} mm from the line ${lineName(overFeet)}: it stands.`
    : `The dot lies ${mm} mm outside the line ${lineName(overFeet)}: it tips over that line.`;
};
