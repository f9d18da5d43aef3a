import { mountPaint } from '@/components/telescope/paint';
import type { Supply } from '@/lib/power/supply';
import { PlugFigure } from './plug-figure';
import { PolaritySymbol } from './polarity-symbol';
import { formNames } from './power-words';

type PartProps = { supply: Supply; width: number; height: number };

/** A supply with its label up and its plug beside it, in a box from (0, 0). */
export function SupplyFigure({ supply, width, height, isIn }: PartProps & { isIn: boolean }) {
  return (
    <>
      <Shape supply={supply} width={width} height={height} isIn={isIn} />
      <Label supply={supply} width={width} height={height} />
      {isIn ? (
        <text x={width - 12} y={height - 12} fontSize="13" textAnchor="end" fill="var(--on-sky)">
          plugged in
        </text>
      ) : (
        <PlugFigure x={width - 26} y={height - 20} />
      )}
    </>
  );
}

/** A mains adapter has its two pins, a pack its handle, a phone pack neither: told by shape before the word. */
function Shape({ supply, width, height, isIn }: PartProps & { isIn: boolean }) {
  return (
    <>
      {supply.form === 'mains-adapter' ? (
        <path d="M14 0 v-9 h7 v9 M34 0 v-9 h7 v9" {...mountPaint} strokeWidth="2" />
      ) : supply.form === 'battery-pack' ? (
        <path d="M10 0 v-8 h44 v8" fill="none" stroke="var(--sky-line)" strokeWidth="3" />
      ) : null}
      <rect
        width={width}
        height={height}
        rx={supply.form === 'usb-pack' ? 18 : 6}
        {...mountPaint}
        stroke={isIn ? 'var(--sky-lamp)' : 'var(--sky-line)'}
        strokeWidth={isIn ? 3 : 1.5}
      />
      <text x="14" y="24" fontSize="15" fontWeight="700" fill="var(--on-sky)">
        {supply.id}
      </text>
      <text x="32" y="24" fontSize="14" fill="var(--on-sky)">
        {formNames[supply.form]}
      </text>
    </>
  );
}

/** The printed label: volts, amperes, polarity. */
function Label({ supply, width, height }: PartProps) {
  return (
    <g transform="translate(10 34)">
      <rect width={width - 20} height={Math.min(height - 74, 92)} rx="3" fill="var(--on-sky)" />
      <g fill="var(--land-near)">
        <text x="10" y="22" fontSize="16" fontWeight="700">
          {supply.volts} V d.c.
        </text>
        <text x={width - 30} y="22" fontSize="15" fontWeight="600" textAnchor="end">
          {supply.ratedA} A
        </text>
      </g>
      <g transform={`translate(${String((width - 20) / 2)} ${height > 150 ? '58' : '39'})`}>
        <PolaritySymbol centre={supply.centre} colour="var(--land-near)" />
      </g>
    </g>
  );
}
