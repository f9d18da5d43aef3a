import { caughtUpToMm, fingerMm, gapMm, squeezeN } from '@/lib/assembly/pinch';
import { degreesToRadians } from '@/lib/units/angle';
import type { ItemDrawing } from '@/lib/drawings/drawing';
import { drawLegs } from '@/lib/drawings/legs-drawing';

export type ClosingSetting = { splayDeg: number; fingerAtMm: number };
export const startingClosing: ClosingSetting = { splayDeg: 24, fingerAtMm: 60 };
/** The leg of the drawing, and a gentle push of one hand at its foot. */
export const [closingLegMm, closingPushKg] = [1000, 2];

/** Two closing legs and a finger between them. */
export function closingFacts({ splayDeg, fingerAtMm }: ClosingSetting) {
  const gap = gapMm(fingerAtMm, splayDeg);
  const caught = gap < fingerMm;
  const squeezeKg = squeezeN(closingPushKg, closingLegMm, fingerAtMm);
  const reach = Math.min(closingLegMm, caughtUpToMm(splayDeg));
  const room = `Between the legs, ${String(fingerAtMm)} mm from the joint, ${String(Math.round(gap))} mm are left; a finger is about ${String(fingerMm)} mm thick.`;
  const words = caught
    ? `Caught. ${room} A push of only ${String(closingPushKg)} kg at the foot squeezes with ${String(Math.round(squeezeKg))} kg there.`
    : `Still free. ${room} Nearer to the joint than ${String(Math.round(reach))} mm a finger would be caught.`;
  const { width, height, shapes } = drawLegs(splayDeg);
  // A leg of the drawing is 190 units long and hangs at (160, 34).
  const down = (mm: number) =>
    34 + (mm / closingLegMm) * 190 * Math.cos(degreesToRadians(splayDeg));
  const drawing: ItemDrawing = {
    width,
    height,
    alternative: words,
    shapes: [
      ...shapes,
      {
        kind: 'line',
        x1: 160,
        y1: 34,
        x2: 160,
        y2: down(reach),
        stroke: 'danger',
        width: 3,
        dashed: true,
      },
      {
        kind: 'circle',
        cx: 160,
        cy: down(fingerAtMm),
        r: 5,
        fill: caught ? 'danger' : 'good',
        stroke: 'ink',
      },
      {
        kind: 'line',
        x1: 168,
        y1: down(fingerAtMm),
        x2: 262,
        y2: Math.min(down(fingerAtMm), 200),
        stroke: 'ink',
        width: 1,
        dashed: true,
      },
      {
        kind: 'text',
        x: 286,
        y: Math.min(down(fingerAtMm), 200) + 5,
        anchor: 'middle',
        text: caught ? 'caught' : 'free',
        size: 13,
        bold: true,
      },
    ],
  };
  return { caught, gapMm: gap, squeezeKg, drawing, words };
}
