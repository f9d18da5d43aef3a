import { mountPaint } from '@/components/telescope/paint';
import type { BenchLayout } from './bench-layout';

type MeterFigureProps = {
  layout: BenchLayout;
  /** What it is held to: "at the socket" */
  at: string;
  reads: string;
  /** Below the reading, such as the current. */
  also?: string;
};

/** The meter with its dark figures on a light display. */
export function MeterFigure({ layout, at, reads, also }: MeterFigureProps) {
  const { x, y, width, height } = layout.meter;
  return (
    <g transform={`translate(${String(x)} ${String(y)})`} aria-hidden="true">
      <rect width={width} height={height} rx="10" {...mountPaint} />
      <rect x="10" y="10" width={width - 20} height="52" rx="4" fill="var(--on-sky)" />
      <text
        x={width - 18}
        y="36"
        fontSize="25"
        fontWeight="700"
        textAnchor="end"
        fill="var(--land-near)"
        className="tabular-nums"
      >
        {reads}
      </text>
      {also === undefined ? null : (
        <text x={width - 18} y="55" fontSize="14" textAnchor="end" fill="var(--land-near)">
          {also}
        </text>
      )}
      <text x="12" y="80" fontSize="13.5" fill="var(--on-sky)">
        {at}
      </text>
    </g>
  );
}
