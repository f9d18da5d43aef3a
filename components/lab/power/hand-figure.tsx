import { darkPaint, mountPaint } from '@/components/telescope/paint';
import type { BenchLayout } from './bench-layout';
import { SvgButton } from './svg-button';

type HandFigureProps = {
  layout: BenchLayout;
  slewing: boolean;
  onSlew: () => void;
};

/** The hand control: two crossed rocker strips. A press at the end of both slews at full speed. */
export function HandFigure({ layout, slewing, onSlew }: HandFigureProps) {
  const { x, y, width, height } = layout.hand;
  const half = Math.min(width, height - 28) / 2 - 6;
  return (
    <SvgButton
      label="Hand control: slew at full speed"
      hit={layout.hand}
      pressed={slewing}
      onPress={onSlew}
    >
      <rect {...layout.hand} rx="10" {...mountPaint} />
      <g transform={`translate(${String(x + width / 2)} ${String(y + 8 + half)})`}>
        {[0, 90].map((turn) => (
          <g key={turn} transform={`rotate(${String(turn)})`}>
            <rect x={-half} y="-11" width={2 * half} height="22" rx="6" {...darkPaint} />
            {[-1, 1].map((side) => (
              <path
                key={side}
                d={`M${String(side * half * 0.5)} -4 v8 M${String(side * half * 0.8)} -8 v16`}
                stroke={slewing && side === 1 ? 'var(--sky-lamp)' : 'var(--on-sky-soft)'}
                strokeWidth={slewing && side === 1 ? 4 : 2}
              />
            ))}
          </g>
        ))}
        <circle r="7" fill="var(--on-sky-soft)" />
      </g>
      <text
        x={x + width / 2}
        y={y + height - 9}
        fontSize="13.5"
        textAnchor="middle"
        fill="var(--on-sky)"
      >
        {slewing ? 'slewing' : 'press to slew'}
      </text>
    </SvgButton>
  );
}
