import type { Supply } from '@/lib/power/supply';
import { cardAt, type BenchLayout } from './bench-layout';
import { labelText } from './power-words';
import { SupplyFigure } from './supply-figure';
import { SvgButton } from './svg-button';

type SupplyCardsProps = {
  layout: BenchLayout;
  supplies: readonly Supply[];
  plugged: string | null;
  onPlug: (supply: string) => void;
};

/** Supplies that lie on the bench with their labels up, each with its plug. */
export function SupplyCards({ layout, supplies, plugged, onPlug }: SupplyCardsProps) {
  const { width, height } = layout.cards;
  return supplies.map((supply, index) => {
    const { x, y } = cardAt(layout, index);
    const isIn = plugged === supply.id;
    return (
      <SvgButton
        key={supply.id}
        label={`Supply ${supply.id}, ${labelText(supply)}. ${isIn ? 'Plugged in: take its plug out.' : 'Plug it in.'}`}
        hit={{ x, y, width, height }}
        pressed={isIn}
        onPress={() => {
          onPlug(supply.id);
        }}
      >
        <g transform={`translate(${String(x)} ${String(y)})`}>
          <SupplyFigure supply={supply} width={width} height={height} isIn={isIn} />
        </g>
      </SvgButton>
    );
  });
}
