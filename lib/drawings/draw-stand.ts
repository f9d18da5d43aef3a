import type { Stand } from '../assembly/stand';
import type { ItemDrawing, Shape } from './drawing';

/** What the telescope's leads do beside the stand. */
type Leads = { on: boolean; supply: boolean; handControl: boolean };

/** Where to point at; `where` does not name the part. */
export const standSpots = {
  tube: { x: 150, y: 40, where: 'at the top, the long part' },
  clamp: { x: 160, y: 74, where: 'where the long part meets the box below it' },
  bolt: { x: 160, y: 118, where: 'in the middle, below the box' },
  tray: { x: 160, y: 152, where: 'in the middle, between the legs' },
  switch: { x: 184, y: 94, where: 'on the right of the box' },
  handControl: { x: 256, y: 132, where: 'at the right, at the end of a lead' },
  supply: { x: 62, y: 176, where: 'at the lower left, at the end of a lead' },
} as const;
export type StandPart = keyof typeof standSpots;

/** How the stand stands, for whoever does not see it. */
export function standWords(stand: Stand): string {
  if (stand.tipped) return 'The stand has gone over.';
  const tube = {
    away: 'The tube is away.',
    held: 'The tube is held by hands.',
    clamped: 'The tube is in its clamp.',
    fallen: 'The tube lies on the ground.',
  }[stand.tube];
  const mount = {
    away: 'The mount is away.',
    on: 'The mount sits loose on the tripod.',
    bolted: 'The mount is bolted to the tripod.',
  }[stand.mount];
  return `${tube} ${mount} The tray is ${stand.tray ? 'in' : 'out'}. The legs are ${stand.legs}.`;
}

function standShapes(stand: Stand): Shape[] {
  const spread = stand.legs === 'spread' ? 62 : 10;
  const shapes: Shape[] = [-1, 0, 1].map((side): Shape => ({
    kind: 'line',
    x1: 160,
    y1: 112,
    x2: 160 + side * spread,
    y2: side === 0 ? 186 : 194,
    stroke: 'ink',
    width: 5,
  }));
  if (stand.tray)
    shapes.push({ kind: 'line', x1: 136, y1: 152, x2: 184, y2: 152, stroke: 'ink', width: 4 });
  if (stand.mount !== 'away')
    shapes.push(
      {
        kind: 'rect',
        x: 138,
        y: 80,
        w: 52,
        h: 32,
        round: 4,
        fill: 'sunken',
        stroke: 'ink',
        width: 2,
      },
      {
        kind: 'circle',
        cx: 160,
        cy: 118,
        r: 5,
        fill: stand.mount === 'bolted' ? 'ink' : 'panel',
        stroke: 'ink',
      },
    );
  if (stand.tube === 'clamped' || stand.tube === 'held')
    shapes.push(
      { kind: 'rect', x: 152, y: 66, w: 16, h: 16, fill: 'strong', stroke: 'ink' },
      {
        kind: 'rect',
        x: 92,
        y: 44,
        w: 130,
        h: 24,
        round: 4,
        fill: 'panel',
        stroke: 'ink',
        width: 2,
      },
    );
  if (stand.tube === 'fallen')
    shapes.push({
      kind: 'rect',
      x: 20,
      y: 166,
      w: 110,
      h: 22,
      round: 4,
      turnDeg: 12,
      fill: 'danger',
      stroke: 'ink',
      width: 2,
    });
  return shapes;
}

function leadShapes({ on, supply, handControl }: Leads): Shape[] {
  return [
    { kind: 'circle', cx: 182, cy: 92, r: 5, fill: on ? 'lamp' : 'panel', stroke: 'ink' },
    { kind: 'text', x: 204, y: 97, text: on ? 'on' : 'off', size: 12 },
    ...(supply
      ? ([
          { kind: 'path', d: 'M140 100 C90 110 60 130 62 164', stroke: 'ink', width: 2 },
          {
            kind: 'rect',
            x: 44,
            y: 164,
            w: 36,
            h: 24,
            round: 3,
            fill: 'sunken',
            stroke: 'ink',
            width: 2,
          },
        ] satisfies Shape[])
      : []),
    ...(handControl
      ? ([
          { kind: 'path', d: 'M188 104 C230 108 250 110 256 120', stroke: 'ink', width: 2 },
          {
            kind: 'rect',
            x: 244,
            y: 118,
            w: 24,
            h: 40,
            round: 5,
            fill: 'sunken',
            stroke: 'ink',
            width: 2,
          },
        ] satisfies Shape[])
      : []),
  ];
}

/** A telescope at the end of an evening, its leads beside it where there are any. */
export function drawStand(stand: Stand, leads: Leads | null = null): ItemDrawing {
  const said =
    leads === null
      ? ''
      : ` The switch is ${leads.on ? 'on' : 'off'}, the supply is ${leads.supply ? 'plugged in' : 'unplugged'}, the hand control is ${leads.handControl ? 'plugged in' : 'unplugged'}.`;
  return {
    width: 320,
    height: 204,
    alternative: `${standWords(stand)}${said}`,
    shapes: [
      { kind: 'line', x1: 6, y1: 198, x2: 314, y2: 198, stroke: 'strong', width: 2 },
      ...(stand.tipped
        ? ([
            { kind: 'line', x1: 70, y1: 190, x2: 240, y2: 176, stroke: 'ink', width: 5 },
            { kind: 'line', x1: 70, y1: 182, x2: 230, y2: 150, stroke: 'ink', width: 5 },
            {
              kind: 'rect',
              x: 40,
              y: 166,
              w: 44,
              h: 26,
              round: 4,
              fill: 'danger',
              stroke: 'ink',
              width: 2,
            },
          ] satisfies Shape[])
        : standShapes(stand)),
      ...(leads === null || stand.mount === 'away' || stand.tipped ? [] : leadShapes(leads)),
    ],
  };
}
