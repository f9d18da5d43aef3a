import { degreesToRadians } from '../units/angle';
import type { Shape } from './drawing';

export type LegsPlace = 'joint' | 'spreader' | 'lock' | 'foot' | 'head';

/** Two of the legs from the side with spreader and locks, half folded; places of what one may touch. */
export function drawLegs(splayDeg: number) {
  const [width, height] = [320, 240];
  const top = { x: 160, y: 34 };
  const long = 190;
  const half = degreesToRadians(splayDeg);
  const along = (share: number, side: 1 | -1) => ({
    x: Math.round(10 * (top.x + side * (9 + share * long * Math.sin(half)))) / 10,
    y: Math.round(10 * (top.y + share * long * Math.cos(half))) / 10,
  });
  const left = along(1, -1);
  const [leftBrace, rightBrace] = [along(0.45, -1), along(0.45, 1)];
  const sag = { x: 160, y: Math.max(leftBrace.y - 34, 84) };
  const leg = (side: 1 | -1): Shape[] => {
    const [from, knee, to] = [along(0, side), along(0.68, side), along(1, side)];
    return [
      { kind: 'line', x1: from.x, y1: from.y, x2: knee.x, y2: knee.y, stroke: 'soft', width: 11 },
      { kind: 'line', x1: knee.x, y1: knee.y, x2: to.x, y2: to.y, stroke: 'soft', width: 6 },
      { kind: 'rect', x: knee.x - 9, y: knee.y - 7, w: 18, h: 13, round: 3, fill: 'ink' },
    ];
  };
  const shapes: Shape[] = [
    { kind: 'rect', x: 0, y: 0, w: width, h: height, fill: 'panel' },
    { kind: 'line', x1: 20, y1: 230, x2: 300, y2: 230, stroke: 'line', width: 3 },
    ...leg(-1),
    ...leg(1),
    {
      kind: 'line',
      x1: leftBrace.x,
      y1: leftBrace.y,
      x2: sag.x,
      y2: sag.y,
      stroke: 'strong',
      width: 4,
    },
    {
      kind: 'line',
      x1: rightBrace.x,
      y1: rightBrace.y,
      x2: sag.x,
      y2: sag.y,
      stroke: 'strong',
      width: 4,
    },
    { kind: 'circle', cx: sag.x, cy: sag.y, r: 5, fill: 'strong' },
    { kind: 'rect', x: 136, y: 16, w: 48, h: 18, round: 3, fill: 'ink' },
  ];
  const lock = along(0.68, 1);
  const spots: Readonly<Record<LegsPlace, { x: number; y: number }>> = {
    head: { x: 160, y: 14 },
    joint: { x: 160, y: 46 },
    spreader: { x: sag.x, y: sag.y },
    lock,
    foot: left,
  };
  return { width, height, shapes, spots };
}
