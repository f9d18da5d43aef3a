import { wrap180, wrap360 } from '../../units/angle';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { Position } from './drawn-sky';
import { compassPoint } from '../../wording/compass-points';
import { inFists } from '../../wording/fists';

const width = 320;
const height = 220;
const ground = 170;
const pxPerDeg = 2.6;

/** The view in one direction with a mark every fist, and one star in it; at most 55° to either side. */
export function panorama(facingDeg: number, star: Position): ItemDrawing {
  const offDeg = wrap180(star.azimuthDeg - facingDeg);
  const x = width / 2 + pxPerDeg * offDeg;
  const y = ground - pxPerDeg * star.altitudeDeg;
  const fists = [-5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5];
  const shapes: Shape[] = [
    { kind: 'rect', x: 0, y: 0, w: width, h: ground, fill: 'sky' },
    { kind: 'rect', x: 0, y: ground, w: width, h: height - ground, fill: 'land' },
    ...fists.map((fist): Shape => {
      const at = width / 2 + 10 * pxPerDeg * fist;
      return {
        kind: 'line',
        x1: at,
        y1: ground - 6,
        x2: at,
        y2: ground + 6,
        stroke: 'on-sky-soft',
        width: 2,
      };
    }),
    ...[1, 2, 3, 4, 5, 6].map((fist): Shape => {
      const at = ground - 10 * pxPerDeg * fist;
      return { kind: 'line', x1: x - 8, y1: at, x2: x + 8, y2: at, stroke: 'sky-line', width: 1 };
    }),
    { kind: 'line', x1: x, y1: ground, x2: x, y2: y, stroke: 'sky-line', width: 1, dashed: true },
    { kind: 'circle', cx: x, cy: y, r: 5, fill: 'on-sky' },
    {
      kind: 'text',
      x: width / 2,
      y: ground + 26,
      text: compassPoint(wrap360(facingDeg)),
      tone: 'on-sky',
      anchor: 'middle',
      bold: true,
    },
  ];
  const hand = offDeg < 0 ? 'left' : 'right';
  return {
    width,
    height,
    shapes,
    alternative: `The view to the ${compassPoint(facingDeg)}. A star stands ${inFists(Math.abs(offDeg))} to the ${hand} of due ${compassPoint(facingDeg)} and ${inFists(star.altitudeDeg)} above the horizon.`,
  };
}
