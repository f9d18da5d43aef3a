import type { ItemDrawing, Shape } from '../../drawings/drawing';

const middle = 150;
const rim = 120;

const around = (pageDeg: number, radius: number): { x: number; y: number } => {
  const angle = (pageDeg * Math.PI) / 180;
  return {
    x: Math.round(10 * (160 + radius * Math.sin(angle))) / 10,
    y: Math.round(10 * (middle - radius * Math.cos(angle))) / 10,
  };
};

/** On the rim, so many degrees clockwise from the top of the page. */
export const onCompass = (pageDeg: number): { x: number; y: number } => around(pageDeg, rim);

/** A compass that lies anyhow on the page, its dial counted from the needle; spots on the dial are marked. */
export function compassDrawing(needleDeg: number, spotsDeg: readonly number[]): ItemDrawing {
  const tip = around(needleDeg, 70);
  const tail = around(needleDeg + 180, 70);
  const [left, right] = [around(needleDeg - 90, 9), around(needleDeg + 90, 9)];
  const dial = Array.from({ length: 36 }, (_, i): Shape => {
    const inner = around(needleDeg + 10 * i, i % 9 === 0 ? 96 : 104);
    const outer = around(needleDeg + 10 * i, 110);
    return {
      kind: 'line',
      x1: inner.x,
      y1: inner.y,
      x2: outer.x,
      y2: outer.y,
      stroke: 'strong',
      width: i % 9 === 0 ? 2 : 1,
    };
  });
  const figures = [0, 90, 180, 270].map((deg): Shape => {
    const { x, y } = around(needleDeg + deg, 84);
    return {
      kind: 'text',
      x,
      y: y + 5,
      text: String(deg),
      size: 13,
      anchor: 'middle',
      tone: 'soft',
    };
  });
  const half = (to: { x: number; y: number }): string =>
    `M${String(to.x)} ${String(to.y)}L${String(left.x)} ${String(left.y)}L${String(right.x)} ${String(right.y)}Z`;
  return {
    width: 320,
    height: 300,
    shapes: [
      { kind: 'circle', cx: 160, cy: middle, r: 110, fill: 'panel', stroke: 'strong', width: 2 },
      ...dial,
      ...figures,
      { kind: 'path', d: half(tip), fill: 'ink', stroke: 'ink', width: 1 },
      { kind: 'path', d: half(tail), fill: 'panel', stroke: 'ink', width: 1 },
      ...spotsDeg.map((deg): Shape => {
        const { x, y } = onCompass(needleDeg + deg);
        return { kind: 'circle', cx: x, cy: y, r: 6, stroke: 'accent', width: 2, fill: 'panel' };
      }),
    ],
    alternative:
      'A compass from above. Its needle lies along 0° of the dial; the dial is counted clockwise from there. The dark end of the needle points to magnetic north.',
  };
}
