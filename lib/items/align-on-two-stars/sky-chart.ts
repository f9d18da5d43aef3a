import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { boxRound, placeNames } from '../place-names';
import { figures } from './words';

export type ChartPlace = { azimuthDeg: number; altitudeDeg: number };

const centre = { x: 160, y: 150 };
const rim = 124;

/**
 * Where a place stands on the chart: the zenith in the middle, the horizon as the rim, altitude evenly
 * spaced; north up and east on the left, as one sees it lying on the back.
 */
export function chartPoint({ azimuthDeg, altitudeDeg }: ChartPlace): { x: number; y: number } {
  const fromZenith = ((90 - altitudeDeg) / 90) * rim;
  const azimuth = (azimuthDeg * Math.PI) / 180;
  return {
    x: round(centre.x - fromZenith * Math.sin(azimuth)),
    y: round(centre.y - fromZenith * Math.cos(azimuth)),
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;

const winds = [
  ['N', 0],
  ['E', 90],
  ['S', 180],
  ['W', 270],
] as const;

/** Without a label where the learner points: the rings over the drawing carry letters of their own. */
export type ChartMark = ChartPlace & { label?: string; kind?: 'star' | 'target' };
export type ChartArrow = { from: ChartPlace; to: ChartPlace };
/** A few degrees are lost below a star: arrows are drawn longer, all by as much, the longest so long. */
const longestArrow = 44;

/** The whole sky with places on it. */
export function skyChart({
  marks,
  arrows = [],
  alternative,
}: {
  marks: readonly ChartMark[];
  arrows?: readonly ChartArrow[];
  alternative: string;
}): ItemDrawing {
  const lines = lengthened(arrows);
  const ring = (altitudeDeg: number): Shape => ({
    kind: 'circle',
    cx: centre.x,
    cy: centre.y,
    r: round(((90 - altitudeDeg) / 90) * rim),
    stroke: 'sky-line',
    width: 0.75,
    dashed: true,
  });
  return {
    width: 320,
    height: 300,
    alternative,
    shapes: [
      { kind: 'circle', cx: centre.x, cy: centre.y, r: rim, fill: 'sky', stroke: 'sky-line' },
      ring(30),
      ring(60),
      ...winds.map(([text, azimuthDeg]): Shape => {
        const { x, y } = chartPoint({ azimuthDeg, altitudeDeg: -10 });
        return { kind: 'text', x, y: y + 5, text, size: 13, tone: 'ink', anchor: 'middle' };
      }),
      ...lines.flatMap(arrowShapes),
      ...marks.flatMap(markShape),
      ...namesBeside(marks, lines),
    ],
  };
}

function markShape({ kind = 'star', ...place }: ChartMark): Shape {
  const { x, y } = chartPoint(place);
  return kind === 'star'
    ? { kind: 'path', d: starPath(x, y), fill: 'sky-lamp' }
    : { kind: 'circle', cx: x, cy: y, r: 5, stroke: 'on-sky', width: 1.5 };
}

/** Room for a ring over what may be pointed at, and for a star's own points. */
const roomOf = { target: 16, star: 7 };

function namesBeside(marks: readonly ChartMark[], lines: readonly Line[]): Shape[] {
  const dots = marks.map(({ label, kind = 'star', ...place }) => ({
    label,
    kind,
    ...chartPoint(place),
  }));
  const named = dots.flatMap(({ label, x, y }) =>
    label === undefined ? [] : [{ name: label, x, y, r: 5 }],
  );
  return placeNames(named, {
    look: { size: 14, tone: 'on-sky', bold: true },
    keepFree: [
      ...dots.map((dot) =>
        boxRound(dot, dot.kind === 'target' && dot.label === undefined ? roomOf.target : 5.5),
      ),
      ...lines.flatMap(({ from, to }) =>
        [0.4, 0.7, 1].map((share) =>
          boxRound(
            { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) },
            roomOf.star,
          ),
        ),
      ),
    ],
    within: boxRound(centre, rim),
  });
}

const starPath = (x: number, y: number): string =>
  `M${figure(x)} ${figure(y - 7)}l1.6 5.4 5.4 1.6 -5.4 1.6 -1.6 5.4 -1.6 -5.4 -5.4 -1.6 5.4 -1.6Z`;
const figure = (value: number): string => String(round(value));

type Line = { from: { x: number; y: number }; to: { x: number; y: number } };

function lengthened(arrows: readonly ChartArrow[]): Line[] {
  const lines = arrows.map(({ from, to }) => ({ from: chartPoint(from), to: chartPoint(to) }));
  const longest = Math.max(
    ...lines.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y)),
  );
  const times = Math.max(1, longestArrow / longest);
  return lines.map(({ from, to }) => ({
    from,
    to: {
      x: round(from.x + times * (to.x - from.x)),
      y: round(from.y + times * (to.y - from.y)),
    },
  }));
}

function arrowShapes({ from: a, to: b }: Line): Shape[] {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < 1) return [];
  const [dx, dy] = [(b.x - a.x) / length, (b.y - a.y) / length];
  const barb = (side: 1 | -1): Shape => ({
    kind: 'line',
    x1: b.x,
    y1: b.y,
    x2: round(b.x - 6 * dx + side * 4 * dy),
    y2: round(b.y - 6 * dy - side * 4 * dx),
    stroke: 'on-sky',
    width: 2,
  });
  return [
    { kind: 'line', x1: a.x, y1: a.y, x2: b.x, y2: b.y, stroke: 'on-sky', width: 2 },
    barb(1),
    barb(-1),
  ];
}

/** "azimuth 120°, altitude 35°" */
export const chartWhere = ({ azimuthDeg, altitudeDeg }: ChartPlace): string =>
  `azimuth ${figures(azimuthDeg, 0)}°, altitude ${figures(altitudeDeg, 0)}°`;

/** "1: azimuth 120°, altitude 35°." for the words of a chart; what has no name comes by azimuth. */
export const chartWords = (marks: readonly ChartMark[]): string => {
  const named = marks.flatMap((mark) =>
    mark.label === undefined ? [] : [`${mark.label}: ${chartWhere(mark)}.`],
  );
  const nameless = marks
    .filter(({ label }) => label === undefined)
    .sort((a, b) => a.azimuthDeg - b.azimuthDeg || a.altitudeDeg - b.altitudeDeg)
    .map((mark) => `${mark.kind === 'target' ? 'An open circle' : 'A star'}: ${chartWhere(mark)}.`);
  return ['A chart of the whole sky, the zenith in the middle.', ...named, ...nameless].join(' ');
};
