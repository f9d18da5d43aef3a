export type LabelledPoint = { x: number; y: number; text: string };
export type PlacedLabel = LabelledPoint & { labelX: number; labelY: number };

type Box = { left: number; right: number; top: number; bottom: number };

/**
 * Puts a text beside each point so that no two lie over each other, as long as there is room: right of it,
 * left, above or below. The first points are served first. All in the drawing's own units.
 */
export function placeLabels(
  points: readonly LabelledPoint[],
  { size, width, gap }: { size: number; width: number; gap: number },
): PlacedLabel[] {
  const taken: Box[] = points.map(({ x, y }) => around(x, y, gap));
  return points.map((point) => {
    const long = point.text.length * size * 0.56;
    const places = [
      { labelX: point.x + gap, labelY: point.y + size * 0.35 },
      { labelX: point.x - gap - long, labelY: point.y + size * 0.35 },
      { labelX: point.x - long / 2, labelY: point.y - gap - size * 0.2 },
      { labelX: point.x - long / 2, labelY: point.y + gap + size * 0.85 },
    ].map((place) => ({
      ...place,
      box: {
        left: place.labelX,
        right: place.labelX + long,
        top: place.labelY - size * 0.8,
        bottom: place.labelY + size * 0.2,
      },
    }));
    const inside = places.filter(({ box }) => box.left >= 0 && box.right <= width && box.top >= 0);
    const own = around(point.x, point.y, gap);
    const free = inside.find(({ box }) =>
      taken.every((other) => same(other, own) || !overlap(box, other)),
    );
    const { labelX, labelY, box } = free ??
      inside[0] ?? { labelX: point.x, labelY: point.y, box: own };
    taken.push(box);
    return { ...point, labelX, labelY };
  });
}

const around = (x: number, y: number, reach: number): Box => ({
  left: x - reach * 0.8,
  right: x + reach * 0.8,
  top: y - reach * 0.8,
  bottom: y + reach * 0.8,
});
const same = (a: Box, b: Box): boolean => a.left === b.left && a.top === b.top;
const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
