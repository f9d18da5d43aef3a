type Place = Readonly<{ x: number; y: number }>;
type Box = Place & Readonly<{ width: number; height: number }>;

/** Where everything lies, in units that are about pixels on the screen the layout is for. */
export type BenchLayout = Readonly<{
  width: number;
  height: number;
  bayWidth: number;
  cellHeight: number;
  holder: Place;
  tray: Place;
  cards: Box & { columns: number; gap: number };
  plate: Box;
  meter: Box;
  hand: Box;
  /** Null where there is no room for it. */
  telescope: Place | null;
}>;

export const wideLayout: BenchLayout = {
  width: 900,
  height: 660,
  bayWidth: 56,
  cellHeight: 120,
  holder: { x: 18, y: 46 },
  tray: { x: 27, y: 316 },
  cards: { x: 18, y: 56, width: 176, height: 200, columns: 3, gap: 14 },
  plate: { x: 590, y: 336, width: 294, height: 116 },
  meter: { x: 590, y: 470, width: 140, height: 96 },
  hand: { x: 744, y: 470, width: 140, height: 164 },
  telescope: { x: 742, y: 178 },
};

export const tallLayout: BenchLayout = {
  width: 390,
  height: 668,
  bayWidth: 44,
  cellHeight: 92,
  holder: { x: 5, y: 24 },
  tray: { x: 34, y: 264 },
  cards: { x: 4, y: 24, width: 188, height: 128, columns: 2, gap: 12 },
  plate: { x: 4, y: 474, width: 382, height: 88 },
  meter: { x: 4, y: 570, width: 186, height: 94 },
  hand: { x: 200, y: 570, width: 186, height: 94 },
  telescope: null,
};

/** Above and below a cell in its bay: the spring on one side, the contact on the other. */
export const contactRoom = 12;
/** The holder's rim, and the strip below the bays by which a cell is lifted out. */
const rim = 14;
export const liftHeight = 34;

export const holderBox = ({ holder, bayWidth, cellHeight }: BenchLayout, bays: number): Box => ({
  ...holder,
  width: bays * bayWidth + 2 * rim,
  height: cellHeight + 2 * contactRoom + 2 * rim + liftHeight,
});

/** The top left corner of a bay's slot. */
export const bayAt = ({ holder, bayWidth }: BenchLayout, bay: number): Place => ({
  x: holder.x + rim + bay * bayWidth,
  y: holder.y + rim,
});

/** A stud of the closed holder, on its upper edge. */
export const studAt = (layout: BenchLayout, stud: number): Place => ({
  x: bayAt(layout, stud).x,
  y: layout.holder.y + 22,
});

/** The bay under a point of the drawing; null beside them. */
export function bayUnder(layout: BenchLayout, bays: number, { x, y }: Place): number | null {
  const first = bayAt(layout, 0);
  const bay = Math.floor((x - first.x) / layout.bayWidth);
  const below = y - first.y;
  const inside = below >= 0 && below <= layout.cellHeight + 2 * contactRoom + liftHeight;
  return inside && bay >= 0 && bay < bays ? bay : null;
}

const perRow = 8;

/** Where a loose cell lies, by its place among all cells of the bench: it keeps it while others leave. */
export const looseAt = ({ tray, bayWidth, cellHeight }: BenchLayout, index: number): Place => ({
  x: tray.x + (index % perRow) * bayWidth,
  y: tray.y + Math.floor(index / perRow) * (cellHeight + 12),
});

export const cardAt = ({ cards }: BenchLayout, index: number): Place => ({
  x: cards.x + (index % cards.columns) * (cards.width + cards.gap),
  y: cards.y + Math.floor(index / cards.columns) * (cards.height + cards.gap),
});

/** The middle of the telescope's supply socket. */
export const socketAt = ({ plate }: BenchLayout): Place => ({
  x: plate.x + 34,
  y: plate.y + plate.height / 2 - 8,
});
