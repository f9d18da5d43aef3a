import type { ItemDrawing, Shape } from '../../drawings/drawing';

/** A tripod from the side, upright or gone over; for the feedback only. */
export function tripodFromTheSide(over: boolean): ItemDrawing {
  const line = (x1: number, y1: number, x2: number, y2: number, width = 7): Shape => ({
    kind: 'line',
    x1,
    y1,
    x2,
    y2,
    stroke: 'strong',
    width,
  });
  const tube = (x: number, y: number, turnDeg: number): Shape => ({
    kind: 'rect',
    x,
    y,
    w: 125,
    h: 31,
    turnDeg,
    fill: 'soft',
  });
  return {
    width: 320,
    height: 220,
    alternative: over
      ? 'A tripod from the side. One leg has run in, the head leans far over to that side and the tube points at the ground.'
      : 'A tripod from the side. All three legs stand, the head is upright with the tube on it.',
    shapes: [
      line(10, 205, 310, 205, 2),
      ...(over
        ? [
            line(120, 120, 60, 205),
            line(135, 105, 200, 205),
            line(110, 128, 100, 205),
            tube(60, 88, -48),
          ]
        : [
            line(155, 95, 95, 205),
            line(160, 95, 160, 205),
            line(165, 95, 225, 205),
            tube(95, 55, -12),
          ]),
    ],
  };
}
