import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemKit } from '../item-family';

const width = 320;
const height = 190;
const axisY = 92;

/** Where a place on the tape lies in the drawing: the front is on the right. */
export function xOf({ tube }: ItemKit, alongMm: number): number {
  const perMm = 296 / (tube.lengthMm + 230);
  return Math.round(10 * (308 - (alongMm + 100) * perMm)) / 10;
}

type Shown = {
  kit: ItemKit;
  clampMm: number;
  /** A cross where everything together balances. */
  balanceMm?: number;
  /** How far the front has sunk (positive) or risen, degrees; drawn as it is. */
  frontDownDeg?: number;
};

const tapeY = 128;

/** A tube from the side with its tape below and the clamp's foot under it; front on the right. */
export function tubeDrawing({ kit, clampMm, balanceMm, frontDownDeg = 0 }: Shown): ItemDrawing {
  const { lengthMm, diameterMm } = kit.tube;
  const x = (mm: number) => xOf(kit, mm);
  const perMm = (x(0) - x(lengthMm)) / lengthMm;
  const radius = (diameterMm * perMm) / 2;
  const clampX = x(clampMm);
  const turned = (px: number, py: number) => {
    const angle = (frontDownDeg * Math.PI) / 180;
    const [dx, dy] = [px - clampX, py - axisY];
    return {
      x: clampX + dx * Math.cos(angle) - dy * Math.sin(angle),
      y: axisY + dx * Math.sin(angle) + dy * Math.cos(angle),
    };
  };
  const box = (fromMm: number, toMm: number, half: number, fill: 'soft' | 'strong'): Shape => {
    const middle = turned((x(fromMm) + x(toMm)) / 2, axisY);
    const w = x(fromMm) - x(toMm);
    return {
      kind: 'rect',
      x: middle.x - w / 2,
      y: middle.y - half,
      w,
      h: 2 * half,
      round: 2,
      turnDeg: frontDownDeg,
      fill,
    };
  };
  const eyepiece = kit.parts.find(({ id }) => id === 'eyepiece-25');
  const eyepieceAt = eyepiece?.fromFrontMm ?? lengthMm;
  const ticks = Array.from({ length: Math.floor(lengthMm / 100) + 1 }, (_, i) => 100 * i);
  const cross = balanceMm === undefined ? null : turned(x(balanceMm), axisY);
  const words = [
    `${kit.name} from the side, its front on the right. A tape along it counts millimetres from the front end towards the back; the tube is ${String(lengthMm)} mm long. The clamp grips at ${String(clampMm)} mm.`,
    ...(balanceMm === undefined
      ? []
      : [`A cross at ${String(balanceMm)} mm marks the balance point.`]),
    ...(frontDownDeg === 0 ? [] : [`The ${frontDownDeg > 0 ? 'front' : 'back'} has sunk.`]),
  ];
  return {
    width,
    height,
    alternative: words.join(' '),
    shapes: [
      // The eyepiece with what it sits on: behind the tube, or on its side near the front.
      ...(eyepieceAt > lengthMm
        ? [box(lengthMm, eyepieceAt, 6, 'strong')]
        : [box(eyepieceAt - 18, eyepieceAt + 18, radius + 9, 'strong')]),
      box(0, lengthMm, radius, 'soft'),
      box(-6, 22, radius + 4, 'strong'),
      ...(frontDownDeg === 0 ? tape(ticks, x) : []),
      {
        kind: 'path',
        d: `M${String(clampX)} ${String(axisY + radius - 2)} l-11 24 h22 Z`,
        fill: 'accent',
        stroke: 'ink',
        width: 1,
      },
      {
        kind: 'line',
        x1: clampX,
        y1: axisY + radius + 22,
        x2: clampX,
        y2: Math.max(axisY + radius + 22, tapeY + 17),
        stroke: 'ink',
        width: 6,
      },
      ...(cross === null
        ? []
        : ([
            {
              kind: 'circle',
              cx: cross.x,
              cy: cross.y,
              r: 9,
              fill: 'panel',
              stroke: 'ink',
              width: 2,
            },
            {
              kind: 'path',
              d: `M${cross.x.toFixed(1)} ${(cross.y - 9).toFixed(1)} v18 M${(cross.x - 9).toFixed(1)} ${cross.y.toFixed(1)} h18`,
              stroke: 'ink',
              width: 2,
            },
          ] satisfies Shape[])),
      { kind: 'text', x: 312, y: 20, text: 'front →', size: 13, tone: 'ink', anchor: 'end' },
    ],
  };
}

function tape(ticks: readonly number[], x: (mm: number) => number): Shape[] {
  const [first = 0, last = 0] = [ticks[0], ticks.at(-1)];
  return [
    {
      kind: 'line',
      x1: x(first),
      y1: tapeY + 26,
      x2: x(last),
      y2: tapeY + 26,
      stroke: 'strong',
      width: 1.5,
    },
    ...ticks.flatMap((mm): Shape[] => [
      {
        kind: 'line',
        x1: x(mm),
        y1: tapeY + 20,
        x2: x(mm),
        y2: tapeY + 32,
        stroke: 'strong',
        width: 1.5,
      },
      {
        kind: 'text',
        x: x(mm),
        y: tapeY + 46,
        text: String(mm),
        size: 12,
        tone: 'soft',
        anchor: 'middle',
      },
    ]),
  ];
}
