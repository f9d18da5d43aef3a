import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { enough, helpWords, type NeededLevel, type Observation } from '../../mastery/sign-off';

const rowHeight = 64;

/** A student's card for one skill: a line an evening. */
export function drawRecord(
  skill: string,
  needed: NeededLevel,
  observations: readonly Observation[],
): ItemDrawing {
  const rows = observations.flatMap(({ date, level, gate }, i): Shape[] => {
    const y = 86 + rowHeight * i;
    return [
      { kind: 'line', x1: 6, x2: 314, y1: y - 22, y2: y - 22, stroke: 'line' },
      { kind: 'text', x: 16, y, text: date, size: 14, bold: true },
      { kind: 'text', x: 304, y, text: `level ${String(level)}`, anchor: 'end', bold: true },
      { kind: 'text', x: 16, y: y + 17, text: helpWords[level], size: 13 },
      {
        kind: 'text',
        x: 16,
        y: y + 34,
        size: 13,
        tone: gate === null ? 'soft' : 'danger',
        text: gate === null ? 'gates: all passed' : `gate failed: ${gate}`,
      },
    ];
  });
  const told = observations.map(
    ({ date, level, gate }) =>
      `${date}: level ${String(level)}, ${helpWords[level]}; ${gate === null ? 'all gates passed' : `gate failed: ${gate}`}`,
  );
  return {
    width: 320,
    height: 70 + rowHeight * observations.length,
    alternative: `A card for the skill “${skill}”, to be signed off at ${enough(needed)}. ${told.join('. ')}.`,
    shapes: [
      {
        kind: 'rect',
        x: 2,
        y: 2,
        w: 316,
        h: 66 + rowHeight * observations.length,
        round: 6,
        fill: 'panel',
        stroke: 'strong',
        width: 1.5,
      },
      { kind: 'text', x: 16, y: 24, text: skill, size: 16, bold: true },
      {
        kind: 'text',
        x: 16,
        y: 46,
        size: 13,
        tone: 'soft',
        text: `signed off at ${enough(needed)}, twice`,
      },
      ...rows,
    ],
  };
}
