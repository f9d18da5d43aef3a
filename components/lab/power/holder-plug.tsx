import { holderBox, type BenchLayout } from './bench-layout';
import { CurrentWire } from './current-wire';
import { PlugFigure } from './plug-figure';
import { SvgButton } from './svg-button';

type HolderPlugProps = {
  layout: BenchLayout;
  bays: number;
  isIn: boolean;
  onPress: () => void;
};

/** The holder's own lead and plug: loose beside it, or gone to the telescope. */
export function HolderPlug({ layout, bays, isIn, onPress }: HolderPlugProps) {
  if (isIn) return null;
  const { x, y, width, height } = holderBox(layout, bays);
  const wide = layout.telescope !== null;
  const from = wide ? { x: x + width, y: y + height / 2 } : { x: x + 12, y: y + height };
  const plug = wide ? { x: from.x + 74, y: from.y + 30 } : { x: from.x + 70, y: from.y + 26 };
  return (
    <>
      <CurrentWire from={from} to={{ x: plug.x, y: plug.y + 14 }} sag={wide ? 40 : 14} amps={0} />
      <SvgButton
        label="The holder’s plug: plug it in"
        hit={{ x: plug.x - 24, y: plug.y - 26, width: 110, height: 50 }}
        onPress={onPress}
      >
        <PlugFigure x={plug.x} y={plug.y} />
        <text x={plug.x + 16} y={plug.y + 8} fontSize="13.5" fill="var(--on-sky)">
          plug it in
        </text>
      </SvgButton>
    </>
  );
}
