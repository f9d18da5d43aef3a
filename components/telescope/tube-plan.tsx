import { degreesToRadians } from '@/lib/units/angle';
import type { TubeType } from '@/lib/optics/image-orientation';
import { darkPaint, fittingPaint, tubePaint } from './paint';
import { tubeSizes } from './tube-size';

type TubePlanProps = {
  kind: TubeType;
  /** Above level, degrees, −90 to 90. */ altitudeDeg: number;
};

/**
 * An optical tube seen from straight above, front towards the top of the page; the altitude axis
 * crosses at (0, 0). Raised, it looks shorter, and from above one sees into its front.
 */
export function TubePlan({ kind, altitudeDeg }: TubePlanProps) {
  const { front, radius } = tubeSizes[kind];
  const altitude = degreesToRadians(altitudeDeg);
  const shortened = Math.cos(altitude);
  const mouth = kind === 'refractor' ? radius + 4 : radius;
  return (
    <g>
      <g transform={`scale(1 ${shortened.toFixed(4)})`}>
        <BodyPlan kind={kind} />
      </g>
      {altitude > 0 ? (
        <ellipse
          cy={(-front * shortened).toFixed(2)}
          rx={mouth}
          ry={(mouth * Math.sin(altitude)).toFixed(2)}
          {...(kind === 'maksutov-cassegrain' ? fittingPaint : darkPaint)}
        />
      ) : null}
    </g>
  );
}

function BodyPlan({ kind }: { kind: TubeType }) {
  const { front, back, radius } = tubeSizes[kind];
  const tube = (
    <rect x={-radius} y={-front} width={2 * radius} height={front + back} rx="1.5" {...tubePaint} />
  );
  const ring = (y: number, more: number, height: number) => (
    <rect
      x={-radius - more}
      y={y}
      width={2 * (radius + more)}
      height={height}
      rx="1.5"
      {...fittingPaint}
    />
  );
  switch (kind) {
    case 'refractor':
      return (
        <g>
          <rect x="-8" y={back} width="16" height="18" {...fittingPaint} />
          <rect x="-9" y={back + 16} width="18" height="16" rx="2" {...darkPaint} />
          <circle cy={back + 34} r="7.5" {...darkPaint} />
          {tube}
          {ring(-front, 4, 38)}
          {ring(back - 4, -3, 8)}
          <FinderPlan y={back - 14} />
        </g>
      );
    case 'reflector':
      return (
        <g>
          <rect x={-radius - 12} y={-front + 12} width="16" height="26" {...fittingPaint} />
          <rect x={-radius - 26} y={-front + 18} width="14" height="14" {...fittingPaint} />
          <rect x={-radius - 34} y={-front + 16} width="8" height="18" rx="1.5" {...darkPaint} />
          {tube}
          <path
            d={`M${String(-radius)} ${String(-front + 6)} h${String(2 * radius)}`}
            stroke="var(--land-near)"
          />
          {ring(back - 2, 1, 10)}
          {[-12, 0, 12].map((x) => (
            <rect key={x} x={x - 3} y={back + 8} width="6" height="5" {...darkPaint} />
          ))}
          <FinderPlan y={-front + 52} />
        </g>
      );
    case 'maksutov-cassegrain':
      return (
        <g>
          <rect x="-8" y={back} width="16" height="16" {...fittingPaint} />
          <rect x="-10" y={back + 14} width="20" height="22" rx="2" {...darkPaint} />
          <circle cy={back + 24} r="8" {...fittingPaint} />
          <circle cy={back + 24} r="5" {...darkPaint} />
          {tube}
          {ring(-front, 2, 12)}
          {ring(back - 3, -6, 8)}
          <FinderPlan y={back - 16} />
        </g>
      );
  }
}

/** The red-dot finder from above. */
function FinderPlan({ y }: { y: number }) {
  return (
    <g transform={`translate(0 ${String(y)})`}>
      <rect x="-4" y="-3" width="8" height="12" rx="1" {...fittingPaint} />
      <rect x="-5.5" y="-9" width="11" height="6" rx="1" {...darkPaint} />
    </g>
  );
}
