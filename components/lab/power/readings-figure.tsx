import type { PowerBench } from '@/lib/power/power-bench';
import type { BenchLayout } from './bench-layout';
import { voltsText } from './power-words';

/** As many as a slip of paper takes. */
const mostLines = 6;

/** The slip of paper on which each reading is noted, newest first. */
export function ReadingsFigure({
  layout,
  readings,
}: {
  layout: BenchLayout;
  readings: PowerBench['readings'];
}) {
  const { x, y } = layout.tray;
  const shown = readings.map((reading, i) => ({ ...reading, number: i + 1 })).slice(-mostLines);
  return (
    <g transform={`translate(${String(x)} ${String(y)})`}>
      <rect width="300" height="190" rx="3" fill="var(--on-sky)" />
      <g fill="var(--land-near)" fontSize="14.5">
        <text x="14" y="26" fontWeight="700">
          Read so far
        </text>
        {shown.length === 0 ? (
          <text x="14" y="52">
            Nothing yet: tap two studs.
          </text>
        ) : null}
        {shown.reverse().map(({ red, black, volts, number }, i) => (
          <g key={number} transform={`translate(0 ${String(52 + i * 24)})`}>
            <text x="14">
              {number}. red {red}, black {black}
            </text>
            <text x="286" textAnchor="end" fontWeight="700" className="tabular-nums">
              {voltsText(volts)}
            </text>
          </g>
        ))}
      </g>
    </g>
  );
}
