import { darkPaint, fittingPaint } from '@/components/telescope/paint';

/** The plug of a supply: its barrel points up from (0, 0). All of them look the same, and all fit. */
export function PlugFigure({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${String(x)} ${String(y)})`} aria-hidden="true">
      <rect x="-5" y="-20" width="10" height="14" rx="2" {...fittingPaint} />
      <rect x="-9" y="-8" width="18" height="24" rx="4" {...darkPaint} />
      <path d="M-5 1 H5 M-5 6 H5 M-5 11 H5" stroke="var(--sky-line)" strokeWidth="1" />
    </g>
  );
}
