import { darkPaint, fittingPaint, tubePaint } from '@/components/telescope/paint';
import type { BayEnd } from '@/lib/power/holder';
import type { BenchCell } from '@/lib/power/power-bench';
import { kindPrinted } from './power-words';

type CellFigureProps = {
  cell: BenchCell;
  plusEnd: BayEnd;
  width: number;
  height: number;
};

/** One cell, upright, in a box from (0, 0): the button and the plus at one end, the flat minus at the other. */
export function CellFigure({ cell, plusEnd, width, height }: CellFigureProps) {
  const middle = width / 2;
  const up = plusEnd === 'top';
  const bodyTop = up ? 6 : 0;
  const bodyHeight = height - 6;
  // Between the collar and the sign at the other end.
  const textY = bodyTop + (up ? 22 + (bodyHeight - 38) / 2 : 16 + (bodyHeight - 38) / 2);
  const signY = (end: BayEnd) => (end === 'top' ? bodyTop + 15 : bodyTop + bodyHeight - 6);
  return (
    <g aria-hidden="true">
      <rect x={middle - 6} y={up ? 0 : height - 7} width="12" height="7" rx="2" {...fittingPaint} />
      <rect x="1" y={bodyTop} width={width - 2} height={bodyHeight} rx="4" {...tubePaint} />
      {/* The plus end wears a dark collar, so that it is seen from afar; the sign says it too. */}
      <rect
        x="1"
        y={up ? bodyTop : bodyTop + bodyHeight - 22}
        width={width - 2}
        height="22"
        rx="4"
        {...darkPaint}
      />
      <g fontSize="17" fontWeight="700" textAnchor="middle">
        <text x={middle} y={signY(plusEnd) + 1} fill="var(--on-sky)">
          +
        </text>
        <text x={middle} y={signY(up ? 'bottom' : 'top')} fill="var(--land-near)">
          −
        </text>
      </g>
      <g fill="var(--land-near)" textAnchor="middle">
        <text
          transform={`translate(${String(middle - 4)} ${String(textY)}) rotate(-90)`}
          fontSize="11"
          fontWeight="600"
          dominantBaseline="middle"
        >
          {kindPrinted[cell.kind]}
        </text>
        <text x={width - 11} y={textY + 5} fontSize="14" fontWeight="700">
          {cell.id}
        </text>
      </g>
    </g>
  );
}
