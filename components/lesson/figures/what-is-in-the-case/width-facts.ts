import type { ItemDrawing, Shape } from '@/lib/drawings/drawing';
import { darkPupilMm, lightRatio } from '@/lib/optics/light-gathered';
import type { FigureKit } from '../figure-data';

export const startingWidthMm = 50;

/** A front beside the pupil of an eye, both to one scale, and how much light the front gathers. */
export function widthFacts(widthMm: number, kits: readonly FigureKit[]) {
  const unitsPerMm = 1.35;
  const [cx, cy] = [120, 108];
  const rings = kits.map(({ name, telescope }, index): Shape[] => {
    const r = (telescope.apertureMm / 2) * unitsPerMm;
    const y = 40 + 22 * index;
    return [
      { kind: 'circle', cx, cy, r, stroke: 'soft', width: 1, dashed: true },
      {
        kind: 'text',
        x: 222,
        y: y + 60,
        text: `${name} ${String(telescope.apertureMm)} mm`,
        size: 12,
        tone: 'soft',
      },
    ];
  });
  const ratio = lightRatio(widthMm, darkPupilMm);
  const times = ratio < 10 ? ratio.toFixed(1) : String(Math.round(ratio));
  const nearest = kits
    .filter(({ telescope }) => telescope.apertureMm === widthMm)
    .map(({ name }) => `That is ${name}. `)
    .join('');
  const words = `A front ${String(widthMm)} mm wide. ${nearest}It gathers ${times} times as much light as an eye whose pupil is ${String(darkPupilMm)} mm wide: (${String(widthMm)} ÷ ${String(darkPupilMm)})².`;
  const drawing: ItemDrawing = {
    width: 320,
    height: 216,
    alternative: words,
    shapes: [
      { kind: 'circle', cx, cy, r: (widthMm / 2) * unitsPerMm, fill: 'lamp', stroke: 'ink' },
      ...rings.flat(),
      { kind: 'circle', cx: 262, cy: 40, r: (darkPupilMm / 2) * unitsPerMm, fill: 'ink' },
      { kind: 'text', x: 262, y: 66, text: 'pupil 7 mm', size: 12, tone: 'soft', anchor: 'middle' },
    ],
  };
  return { ratio, drawing, words };
}
