import { exitPupilMm, magnification } from '../../optics/magnification';
import { numeric } from '../build-item';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemDraw } from '../item-family';
import { inNumber, withAperture } from './words';
import { pickOne } from '../../variants/pick-one';

/** A disc of light on a rule: the exit pupil, read off. */
export function discOnARule({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(random, [32, 25, 20, 18, 15, 12, 10]);
  const pupil = exitPupilMm(kit, { focalLengthMm });
  const startMm = random.integer(1, 3);
  const key = magnification(kit, { focalLengthMm });
  return numeric({
    prompt: `A lamp across the dark room lights up ${withAperture(kit)}. Behind the eyepiece its light falls on a rule as a round disc: the exit pupil. How many times does the telescope magnify?`,
    drawing: ruleDrawing(startMm, pupil),
    unit: 'times',
    key,
    tolerance: { mode: 'relative', full: 0.12, zero: 0.4 },
    explanation: `The disc is ${inNumber(pupil, 1)} mm wide. The tube’s width over the exit pupil is the magnification: ${String(kit.apertureMm)} mm ÷ ${inNumber(pupil, 1)} mm is ${inNumber(key)}.`,
    slips: [
      {
        gives: Number((kit.apertureMm / (startMm + pupil)).toFixed(2)),
        reason: `That reads the disc’s right edge only. It begins at ${String(startMm)} mm, not at 0.`,
      },
      {
        gives: Number((kit.apertureMm * pupil).toFixed(1)),
        reason: 'That multiplies. Divide the width of the tube by the width of the disc.',
      },
    ].filter(({ gives }) => Math.abs(gives / key - 1) > 0.12),
  });
}

function ruleDrawing(startMm: number, pupilMm: number): ItemDrawing {
  const at = (mm: number) => 24 + 27 * mm;
  // Room for the whole disc above the rule.
  const edge = Math.max(128, Math.ceil(27 * pupilMm) + 20);
  const marks = Array.from({ length: 51 }, (_, tenths): Shape[] => {
    const mm = tenths / 5;
    const whole = tenths % 5 === 0;
    return [
      {
        kind: 'line',
        x1: at(mm),
        x2: at(mm),
        y1: edge + 2,
        y2: edge + (whole ? 20 : 10),
        stroke: 'ink',
        width: whole ? 1.5 : 0.7,
      },
      ...(whole
        ? [
            {
              kind: 'text' as const,
              x: at(mm),
              y: edge + 36,
              text: String(mm),
              anchor: 'middle' as const,
            },
          ]
        : []),
    ];
  }).flat();
  return {
    width: 320,
    height: edge + 62,
    alternative: `A rule with a mark every fifth of a millimetre. The disc of light lies on it from ${inNumber(startMm, 1)} mm to ${inNumber(startMm + pupilMm, 1)} mm.`,
    shapes: [
      { kind: 'rect', x: 4, y: 8, w: 312, h: edge + 40, fill: 'sunken', stroke: 'strong' },
      {
        kind: 'circle',
        cx: at(startMm + pupilMm / 2),
        cy: edge - 2 - (27 * pupilMm) / 2,
        r: (27 * pupilMm) / 2,
        fill: 'lamp',
        stroke: 'ink',
        width: 1,
      },
      { kind: 'rect', x: 10, y: edge, w: 300, h: 44, fill: 'panel', stroke: 'strong' },
      ...marks,
      { kind: 'text', x: 308, y: edge - 6, text: 'mm', anchor: 'end' },
    ],
  };
}
