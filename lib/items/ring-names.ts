import type { ItemDrawing } from '../drawings/drawing';
import { reachOf, textBox, type Box } from './text-box';

/** A ring and the disc with its name, where a drawing of 320 is 320 px wide; components/questions/spot-ring.tsx. */
export const ringRadius = 12.5;
export const nameRadius = 8.5;
const nameOffset = 11;

export type Corner = { right: 1 | -1; down: 1 | -1 };
export const upperRight: Corner = { right: 1, down: -1 };
const corners: readonly Corner[] = [
  upperRight,
  { right: -1, down: -1 },
  { right: 1, down: 1 },
  { right: -1, down: 1 },
];

type Point = { x: number; y: number };

/** The middle of a ring's name on that corner, in the drawing's units. */
export const nameAt = ({ x, y }: Point, { right, down }: Corner, unit: number): Point => ({
  x: x + right * nameOffset * unit,
  y: y + down * nameOffset * unit,
});

/**
 * On which corner of each ring its name stands: where it hides no text of the drawing and no other ring;
 * upper right where that is as good as anywhere.
 */
export function cornersOfNames(
  { width, height, shapes }: ItemDrawing,
  spots: readonly Point[],
): readonly Corner[] {
  const unit = width / 320;
  const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? [textBox(shape)] : []));
  const names: Point[] = [];
  const isInside = ({ x, y }: Point): boolean =>
    Math.min(x, y, width - x, height - y) > nameRadius * unit;
  return spots.map((spot) => {
    const costs = corners.map((corner) => {
      const at = nameAt(spot, corner, unit);
      const others = spots.filter((other) => other !== spot);
      return (
        (isInside(at) ? 0 : 3) +
        10 * texts.filter((box: Box) => reachOf(at, box) < nameRadius * unit).length +
        5 * names.filter((other) => apart(at, other) < 2 * nameRadius * unit).length +
        others.filter((other) => apart(at, other) < (ringRadius + nameRadius) * unit).length
      );
    });
    const best = corners[costs.indexOf(Math.min(...costs))];
    if (best === undefined) throw new Error('a ring has four corners');
    names.push(nameAt(spot, best, unit));
    return best;
  });
}

const apart = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);
