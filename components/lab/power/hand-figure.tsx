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
  // Where it is low the words stand beside the cross.
  const beside = width > height * 1.5;
  const half = (beside ? height : Math.min(width, height - 26)) / 2 - 8;
  const cross = beside
    ? { x: x + half + 12, y: y + height / 2 }
    : { x: x + width / 2, y: y + 10 + half };
  const words = beside
    ? { x: x + 2 * half + 26, y: y + height / 2 + 5, textAnchor: 'start' as const }
    : { x: x + width / 2, y: y + height - 9, textAnchor: 'middle' as const };
  const strip = Math.min(22, half * 0.42);
  return (
    <SvgButton
      label="Hand control: slew at full speed"
      hit={layout.hand}
      pressed={slewing}
      onPress={onSlew}
    >
      <rect {...layout.hand} rx="10" {...mountPaint} />
      <g transform={`translate(${String(cross.x)} ${String(cross.y)})`}>
        {[0, 90].map((turn) => (
          <g key={turn} transform={`rotate(${String(turn)})`}>
            <rect x={-half} y={-strip / 2} width={2 * half} height={strip} rx="6" {...darkPaint} />
            {[-1, 1].map((side) => (
              <path
                key={side}
                d={`M${String(side * half * 0.5)} ${String(-strip * 0.18)} v${String(strip * 0.36)} M${String(side * half * 0.8)} ${String(-strip * 0.34)} v${String(strip * 0.68)}`}
                stroke={slewing && side === 1 ? 'var(--sky-lamp)' : 'var(--on-sky-soft)'}
                strokeWidth={slewing && side === 1 ? 4 : 2}
              />
            ))}
          </g>
        ))}
        <circle r={strip * 0.32} fill="var(--on-sky-soft)" />
      </g>
      <text {...words} fontSize="13.5" fill="var(--on-sky)">
        {slewing ? 'slewing' : 'press to slew'}
      </text>
    </SvgButton>
  );
}
