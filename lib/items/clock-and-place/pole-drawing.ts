import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { MisconceptionId } from '../misconceptions';

/** A place on a star's circle round the pole, in eighths of a turn counted against the clock from the top. */
export type PoleSpot = { step: number; reason: string; misconception?: MisconceptionId };

const middle = { x: 160, y: 150 };
const radius = 100;

const words = [
  ...['above', 'above and left of', 'left of', 'below and left of'],
  ...['below', 'below and right of', 'right of', 'above and right of'],
] as const;
const eighth = (step: number): number => ((step % 8) + 8) % 8;
const wordOf = (step: number): string => words[eighth(step)] ?? 'above';

function placeOf(step: number): { x: number; y: number } {
  const angle = (eighth(step) * Math.PI) / 4;
  return {
    x: Math.round(middle.x - radius * Math.sin(angle)),
    y: Math.round(middle.y - radius * Math.cos(angle)),
  };
}

/** The sky round a pole as one sees it facing it, with a star's circle and places on it to point at. */
export function aroundPole({
  north,
  now,
  spots,
  fists,
}: {
  north: boolean;
  now: number;
  spots: readonly PoleSpot[];
  fists: number;
}) {
  const star = placeOf(now);
  const shapes: Shape[] = [
    { kind: 'rect', x: 0, y: 0, w: 320, h: 300, fill: 'sky' },
    {
      kind: 'circle',
      cx: middle.x,
      cy: middle.y,
      r: radius,
      stroke: 'sky-line',
      width: 1,
      dashed: true,
    },
    { kind: 'circle', cx: middle.x, cy: middle.y, r: 3, fill: 'on-sky' },
    {
      kind: 'text',
      x: middle.x,
      y: middle.y + 20,
      text: north ? 'north pole' : 'south pole',
      size: 13,
      tone: 'on-sky',
      anchor: 'middle',
    },
    { kind: 'circle', cx: star.x, cy: star.y, r: 7, fill: 'sky-lamp' },
    { kind: 'rect', x: 0, y: 284, w: 320, h: 16, fill: 'land' },
  ];
  const drawing: ItemDrawing = {
    width: 320,
    height: 300,
    shapes,
    alternative: `The sky in the ${north ? 'north' : 'south'}, as you see it facing that way. The star stands ${String(fists)} fists from the pole, ${wordOf(now)} it. Its circle round the pole is dashed.`,
  };
  return {
    drawing,
    spots: spots.map(({ step, ...why }) => ({
      ...placeOf(step),
      where: `On the circle, ${wordOf(step)} the pole`,
      ...why,
    })),
  };
}
