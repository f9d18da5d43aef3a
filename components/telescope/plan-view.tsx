import type { TubeType } from '@/lib/optics/image-orientation';
import { fittingPaint, mountPaint } from './paint';
import { TubePlan } from './tube-plan';
import { tubeSizes } from './tube-size';

type PlanViewProps = {
  kind: TubeType;
  /** Clockwise from the top of the page, degrees. */
  bearingDeg: number;
  /** Above level, degrees. */
  altitudeDeg: number;
};

const legs = [30, 150, 270];

/**
 * The same telescope from straight above: the tripod stands, arm and tube turn about (0, 0). One unit
 * is 3 mm, only the legs are drawn short; it fits into a circle of radius 128.
 */
export function PlanView({ kind, bearingDeg, altitudeDeg }: PlanViewProps) {
  const { radius } = tubeSizes[kind];
  return (
    <g>
      {legs.map((angle) => (
        <path
          key={angle}
          d="M-5 0 L-3 -86 H3 L5 0 Z"
          transform={`rotate(${String(angle)})`}
          {...mountPaint}
        />
      ))}
      <g transform={`rotate(${String(bearingDeg)})`}>
        <circle r="24" {...mountPaint} />
        <TubePlan kind={kind} altitudeDeg={altitudeDeg} />
        {/* The arm holds the tube at its right side by the dovetail bar. */}
        <rect x={radius - 1} y="-34" width="5" height="68" {...fittingPaint} />
        <rect x={radius + 3} y="-15" width="14" height="30" rx="3" {...mountPaint} />
      </g>
    </g>
  );
}
