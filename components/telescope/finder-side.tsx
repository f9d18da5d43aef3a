import { darkPaint, fittingPaint } from './paint';

/** The red-dot finder on the tube's back, its window towards the front; `y` is the tube's upper edge. */
export function FinderSide({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${String(x)} ${String(y)})`}>
      <path d="M-9 0 V-4 H9 V0 Z" {...fittingPaint} />
      <path d="M-8 -4 V-9 H2 V-4 Z" {...fittingPaint} />
      <path d="M5 -4 L3 -15 H9 L10 -4 Z" {...darkPaint} />
    </g>
  );
}
