'use client';

import type { BayEnd } from '@/lib/power/holder';
import type { BenchCell } from '@/lib/power/power-bench';
import { looseAt, type BenchLayout } from './bench-layout';
import { CellFigure } from './cell-figure';
import { cellText, ways } from './power-words';
import { SvgButton } from './svg-button';
import type { useCellHand } from './use-cell-hand';

type LooseCellsProps = {
  layout: BenchLayout;
  cells: readonly BenchCell[];
  loose: readonly BenchCell[];
  hand: ReturnType<typeof useCellHand>;
};

/** Cells lie as they fell: every other one upside down. It goes into a bay as it lies. */
export const lyingWay = (cells: readonly BenchCell[], id: string): BayEnd =>
  cells.findIndex((cell) => cell.id === id) % 2 === 0 ? 'top' : 'bottom';

/** The cells on the bench, to be taken up by a tap or dragged into a bay. */
export function LooseCells({ layout, cells, loose, hand }: LooseCellsProps) {
  const { bayWidth, cellHeight } = layout;
  return cells.map((cell, index) => {
    if (!loose.includes(cell)) return null;
    const { carried } = hand;
    const lies = looseAt(layout, index);
    const isHeld = hand.held === cell.id;
    const at =
      carried?.cell === cell.id
        ? { x: carried.x - bayWidth / 2, y: carried.y - cellHeight / 2 }
        : { x: lies.x, y: lies.y - (isHeld ? 8 : 0) };
    const way = lyingWay(cells, cell.id);
    return (
      <SvgButton
        key={cell.id}
        label={`${cellText(cell)}, ${ways[way]}. ${isHeld ? 'In your hand: put it back.' : 'Take it up.'}`}
        hit={{ ...at, width: bayWidth, height: cellHeight + 8 }}
        pressed={isHeld}
        onPress={() => {
          hand.press(cell.id);
        }}
        style={{ touchAction: 'none' }}
        // A cell under way must not hide the bay it is let go over from the pointer's own drawing.
        {...hand.handlersOf(cell.id)}
      >
        <g transform={`translate(${String(at.x + 3)} ${String(at.y)})`}>
          <CellFigure cell={cell} plusEnd={way} width={bayWidth - 8} height={cellHeight} />
          {isHeld ? (
            <rect
              x="-3"
              y="-4"
              width={bayWidth - 2}
              height={cellHeight + 8}
              rx="6"
              fill="none"
              stroke="var(--sky-lamp)"
              strokeWidth="3"
            />
          ) : null}
        </g>
      </SvgButton>
    );
  });
}
