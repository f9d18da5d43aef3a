import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { angleText } from '../align-on-two-stars/words';
import { saidOf } from '../align-on-two-stars/aligning';
import { missDeg, type Signature } from './some-evening';

/** The hand control's sentence, short enough for a narrow box. */
export function saidShort({ shown }: Signature): string {
  const { outcome } = shown.evidence;
  switch (outcome.kind) {
    case 'agree':
      return 'These two agree';
    case 'disagree':
      return 'These two disagree';
    case 'absurd-zero':
      return 'These two do not fit';
    case 'base-on-its-side':
      return 'The base would lean too far';
    case 'undetermined':
      return 'These two leave it open';
  }
}

/** What an evening showed, step by step, as rows to read. */
export function eveningStrip(signature: Signature): ItemDrawing {
  const { first, second, later, outcome } = signature.shown.evidence;
  const off = (deg: number): string => `${angleText(60 * deg)} off`;
  const rows: readonly (readonly [string, string])[] = [
    ['First slew', off(missDeg(first))],
    ['Second slew', off(missDeg(second))],
    ['Two stars done', saidShort(signature)],
    ...(later.length === 0
      ? [['Go-tos', 'none: no alignment'] as const]
      : later.map((landing, i) => [`Go-to ${String(i + 1)}`, off(missDeg(landing))] as const)),
  ];
  const rowHeight = 34;
  return {
    width: 320,
    height: rows.length * rowHeight + 12,
    alternative: `What the evening showed. ${rows.map(([name, value]) => `${name}: ${value}.`).join(' ')}${outcome.kind === 'agree' ? ` ${saidOf(outcome)}; the tube was ${angleText(60 * Math.abs(outcome.model.altitudeZeroDeg))} off level, the base leans ${angleText(60 * outcome.baseTiltDeg)}.` : ''}`,
    shapes: rows.flatMap(([name, value], i): Shape[] => {
      const y = 6 + i * rowHeight;
      return [
        {
          kind: 'rect',
          x: 8,
          y,
          w: 304,
          h: rowHeight - 6,
          fill: 'panel',
          stroke: 'line',
          round: 4,
        },
        { kind: 'text', x: 18, y: y + 19, text: name, size: 14, tone: 'soft' },
        {
          kind: 'text',
          x: 302,
          y: y + 19,
          text: value,
          size: 14,
          tone: 'ink',
          anchor: 'end',
          bold: true,
        },
      ];
    }),
  };
}
