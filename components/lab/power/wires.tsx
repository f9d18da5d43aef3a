import { holderPlug } from '@/lib/power/power-bench';
import { cardAt, holderBox, socketAt, type BenchLayout } from './bench-layout';
import { CurrentWire } from './current-wire';

type SupplyWireProps = {
  layout: BenchLayout;
  supplies: readonly { id: string }[];
  plugged: string | null;
  bays: number;
  amps: number;
};

/** From the holder or the supply that is plugged in to the telescope's socket. */
export function SupplyWire({ layout, supplies, plugged, bays, amps }: SupplyWireProps) {
  if (plugged === null) return null;
  return (
    <CurrentWire
      from={sourceAt(layout, supplies, plugged, bays)}
      to={socketAt(layout)}
      amps={amps}
    />
  );
}

function sourceAt(
  layout: BenchLayout,
  supplies: readonly { id: string }[],
  plugged: string,
  bays: number,
): { x: number; y: number } {
  if (plugged === holderPlug) {
    const { x, y, width, height } = holderBox(layout, bays);
    return layout.telescope === null
      ? { x: x + 12, y: y + height }
      : { x: x + width, y: y + height / 2 };
  }
  const card = cardAt(
    layout,
    supplies.findIndex(({ id }) => id === plugged),
  );
  return { x: card.x + layout.cards.width - 20, y: card.y + layout.cards.height - 8 };
}

/** From the telescope's plate to the hand control below it. */
export function HandWire({
  layout,
  isIn,
  amps,
}: {
  layout: BenchLayout;
  isIn: boolean;
  amps: number;
}) {
  if (!isIn) return null;
  const { plate, hand } = layout;
  const x = plate.x + plate.width - 38;
  return (
    <CurrentWire
      from={{ x, y: plate.y + plate.height / 2 - 8 }}
      to={{ x, y: hand.y + 4 }}
      sag={10}
      amps={amps}
    />
  );
}
