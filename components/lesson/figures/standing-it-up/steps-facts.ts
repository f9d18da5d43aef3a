import { edgesOf, readySteps } from '@/lib/assembly/graph';
import { standAfter } from '@/lib/assembly/stand';
import type { AssemblyTask } from '@/lib/assembly/steps';
import type { ItemDrawing, Shape } from '@/lib/drawings/drawing';
import { becauseOf, standStepName, standSteps } from '@/lib/drawings/step-words';

export type BuildStep = (typeof standSteps)[number];
const task: AssemblyTask = { tubeType: 'refractor', kind: 'build' };

/** Why a step has to wait, or null when it may be done now. */
export function waitsFor(step: BuildStep, done: readonly BuildStep[]): string | null {
  if (readySteps(task, done).includes(step)) return null;
  const missing = standSteps.find(
    (before) =>
      !done.includes(before) &&
      edgesOf(task).some((edge) => edge.before === before && edge.after === step),
  );
  return missing === undefined
    ? 'That is done already.'
    : `Not yet: “${standStepName[missing]}” comes first, for ${becauseOf(missing, step)}`;
}

const spread = (to: number, top: number): Shape[] =>
  [-1, 0, 1].map((side) => ({
    kind: 'line',
    x1: 160 + 6 * side,
    y1: top,
    x2: 160 + to * side,
    y2: 206,
    stroke: 'soft',
    width: 8,
  }));

/** The stand as it is after these steps. */
export function stepsDrawing(done: readonly BuildStep[], words: string): ItemDrawing {
  const { legs, raised, tray, mount } = standAfter(done, 'packed');
  const top = raised ? 92 : 128;
  const shapes: Shape[] = [
    { kind: 'line', x1: 30, y1: 211, x2: 290, y2: 211, stroke: 'line', width: 3 },
    ...spread(legs === 'spread' ? 82 : 9, top),
    { kind: 'rect', x: 140, y: top - 8, w: 40, h: 12, round: 3, fill: 'ink' },
  ];
  const braceY = top + (206 - top) * 0.45;
  if (done.includes('lock-spreader'))
    shapes.push({
      kind: 'line',
      x1: 120,
      y1: braceY,
      x2: 200,
      y2: braceY,
      stroke: 'strong',
      width: 4,
    });
  if (done.includes('lock-legs'))
    shapes.push(
      ...[-1, 1].map((side): Shape => ({
        kind: 'circle',
        cx: 160 + 56 * side,
        cy: top + (206 - top) * 0.66,
        r: 5,
        fill: 'lamp',
        stroke: 'ink',
      })),
    );
  if (tray)
    shapes.push({
      kind: 'rect',
      x: 116,
      y: braceY + 5,
      w: 88,
      h: 7,
      round: 3,
      fill: 'accent',
      stroke: 'ink',
    });
  if (mount !== 'away')
    shapes.push({
      kind: 'path',
      d: `M136 ${String(top - 9)} h48 l-8 -20 v-40 a8 8 0 0 0 -32 0 v40 Z`,
      fill: 'sunken',
      stroke: 'ink',
      width: 2,
    });
  if (mount === 'bolted')
    shapes.push({ kind: 'rect', x: 156, y: top + 4, w: 8, h: 16, fill: 'lamp', stroke: 'ink' });
  return { width: 320, height: 222, alternative: words, shapes };
}

export const stepsInWords = (done: readonly BuildStep[]): string =>
  done.length === 0
    ? 'The tripod lies there folded.'
    : done.length === standSteps.length
      ? 'The stand is up and may bear the tube.'
      : `Done: ${done.map((step) => standStepName[step].toLowerCase()).join('; ')}.`;
