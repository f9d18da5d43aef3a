import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** Five places on a plan of six by four squares, seen from above, north up. */
export type SitePlace = 'grass' | 'path' | 'lamp' | 'tree' | 'puddle' | 'slope';
export type Site = Readonly<Record<SitePlace, { column: number; row: number }>>;

const size = 49;
/** Beside the plan stand the rows' numbers, so that nothing on it hides them. */
const left = 22;
export const siteSpot = ({ column, row }: { column: number; row: number }) => ({
  x: left + size * (column + 0.5),
  y: 4 + size * (row + 0.5),
});
export const siteWhere = ({ column, row }: { column: number; row: number }): string =>
  `column ${String(column + 1)}, row ${String(row + 1)}`;

const inWords: Readonly<Record<SitePlace, string>> = {
  grass: 'firm, level grass, away from everything',
  path: 'the middle of the path',
  lamp: 'right below the yard lamp',
  tree: 'close under a tree',
  puddle: 'soft ground by a puddle',
  slope: 'a steep slope',
};

function thing(place: SitePlace, x: number, y: number): Shape[] {
  switch (place) {
    case 'grass':
      return [-10, 0, 10].map((dx) => ({
        kind: 'path',
        d: `M${String(x + dx - 3)} ${String(y + 6)} l3 -10 l3 10`,
        stroke: 'good',
        width: 1.5,
      }));
    case 'path':
      return [
        { kind: 'rect', x: x - 24, y: y - 12, w: 48, h: 24, fill: 'sunken', stroke: 'strong' },
        { kind: 'line', x1: x - 22, x2: x + 22, y1: y, y2: y, stroke: 'strong', dashed: true },
      ];
    case 'lamp':
      return [
        { kind: 'circle', cx: x, cy: y, r: 18, fill: 'lamp', stroke: 'ink' },
        { kind: 'circle', cx: x, cy: y, r: 4, fill: 'ink' },
      ];
    case 'tree':
      return [
        { kind: 'circle', cx: x, cy: y, r: 20, fill: 'good', stroke: 'ink' },
        { kind: 'circle', cx: x, cy: y, r: 4, fill: 'ink' },
      ];
    case 'puddle':
      return [
        {
          kind: 'path',
          fill: 'sky-line',
          stroke: 'ink',
          d: `M${String(x - 20)} ${String(y)} q6 -14 20 -10 q22 0 20 12 q-8 14 -22 10 q-18 0 -18 -12 Z`,
        },
      ];
    case 'slope':
      return [-14, -5, 4, 13].map((dy, i) => ({
        kind: 'line',
        x1: x - 20 + 4 * i,
        x2: x + 20 - 4 * i,
        y1: y + dy,
        y2: y + dy,
        stroke: 'ink',
        width: 1.5,
      }));
  }
}

const places: readonly SitePlace[] = ['grass', 'path', 'lamp', 'tree', 'puddle', 'slope'];

/** The plan, its columns and rows numbered: letters are for the rings over it. */
export function drawSite(site: Site): ItemDrawing {
  const told = places.map((place) => `${siteWhere(site[place])}: ${inWords[place]}`).sort();
  return {
    width: 320,
    height: 224,
    alternative: `A plan of the yard from above in six columns, from the left, and four rows, from the top. ${told.join('. ')}.`,
    shapes: [
      {
        kind: 'rect',
        x: left,
        y: 4,
        w: 6 * size,
        h: 4 * size,
        fill: 'panel',
        stroke: 'ink',
        width: 2,
      },
      ...[1, 2, 3, 4, 5].map((i): Shape => ({
        kind: 'line',
        x1: left + size * i,
        x2: left + size * i,
        y1: 4,
        y2: 4 + 4 * size,
        stroke: 'line',
      })),
      ...[1, 2, 3].map((i): Shape => ({
        kind: 'line',
        x1: left,
        x2: left + 6 * size,
        y1: 4 + size * i,
        y2: 4 + size * i,
        stroke: 'line',
      })),
      ...places.flatMap((place) => thing(place, siteSpot(site[place]).x, siteSpot(site[place]).y)),
      ...[1, 2, 3, 4].map((row): Shape => ({
        kind: 'text',
        x: 4,
        y: 4 + size * (row - 0.5) + 5,
        text: String(row),
        tone: 'soft',
        size: 13,
      })),
      ...Array.from('123456', (text, i): Shape => ({
        kind: 'text',
        x: left + size * (i + 0.5),
        y: 218,
        text,
        anchor: 'middle',
        tone: 'soft',
      })),
    ],
  };
}
