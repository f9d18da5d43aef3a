import type { TubeType } from '@/lib/optics/image-orientation';
import { FinderSide } from './finder-side';
import { darkPaint, fittingPaint, tubePaint } from './paint';
import { tubeSizes } from './tube-size';

/**
 * An optical tube seen from its right, level, front to the right; the altitude axis is at (0, 0) and
 * one unit is 3 mm. Turn the group by minus the altitude to raise it.
 */
export function TubeSide({ kind, fitted = everything }: { kind: TubeType; fitted?: Fitted }) {
  switch (kind) {
    case 'refractor':
      return <RefractorSide fitted={fitted} />;
    case 'reflector':
      return <ReflectorSide fitted={fitted} />;
    case 'maksutov-cassegrain':
      return <ClosedTubeSide fitted={fitted} />;
  }
}

/** What sits on the tube; `imagePart` is the prism or the diagonal. */
export type Fitted = { finder: boolean; imagePart: boolean; eyepiece: boolean };
const everything: Fitted = { finder: true, imagePart: true, eyepiece: true };
type SideProps = { fitted: Fitted };

/** Slim, a wider dew shield in front, and an erecting prism with the eyepiece slanting up at the back. */
function RefractorSide({ fitted }: SideProps) {
  const { front, back, radius } = tubeSizes.refractor;
  const shield = front - 38;
  return (
    <g>
      <path
        d={`M${String(-back)} -8 H${String(-back - 16)} V8 H${String(-back)} Z`}
        {...fittingPaint}
      />
      <circle cx={-back - 7} cy="12" r="5" {...fittingPaint} />
      {/* The prism's housing, and the eyepiece at half a right angle. */}
      {fitted.imagePart ? (
        <path
          d={`M${String(-back - 16)} -9 H${String(-back - 27)} L${String(-back - 34)} -2 V9 H${String(-back - 16)} Z`}
          {...darkPaint}
        />
      ) : null}
      {fitted.eyepiece ? (
        <g transform={`translate(${String(-back - 28)} -4) rotate(-45)`}>
          <path d="M-6 -4 V-17 H6 V-4 Z" {...fittingPaint} />
          <path d="M-7.5 -17 V-24 H7.5 V-17 Z" {...darkPaint} />
        </g>
      ) : null}
      <rect x={-back} y={-radius} width={back + shield + 4} height={2 * radius} {...tubePaint} />
      <path
        d={`M${String(-back)} ${String(-radius)} l-8 5 V${String(radius - 5)} l8 5 Z`}
        {...fittingPaint}
      />
      <rect
        x={shield}
        y={-radius - 4}
        width="38"
        height={2 * radius + 8}
        rx="1.5"
        {...fittingPaint}
      />
      <path
        d={`M${String(shield + 7)} ${String(-radius - 4)} V${String(radius + 4)}`}
        stroke="var(--land-near)"
      />
      {fitted.finder ? <FinderSide x={-back + 12} y={-radius} /> : null}
    </g>
  );
}

/** Wide and open in front, the mirror's cell at the back, the eyepiece at the side near the front. */
function ReflectorSide({ fitted }: SideProps) {
  const { front, back, radius } = tubeSizes.reflector;
  return (
    <g>
      {/* The focuser looks up and away to the left side, so that it stands out above the tube. */}
      <path d={`M${String(front - 38)} ${String(-radius + 3)} v-12 h26 v12 Z`} {...fittingPaint} />
      {fitted.eyepiece ? (
        <>
          <rect x={front - 32} y={-radius - 20} width="14" height="12" {...fittingPaint} />
          <rect x={front - 34} y={-radius - 28} width="18" height="8" rx="1.5" {...darkPaint} />
        </>
      ) : null}
      <circle cx={front - 8} cy={-radius - 4} r="4" {...fittingPaint} />
      <rect x={-back} y={-radius} width={back + front} height={2 * radius} {...tubePaint} />
      <ellipse cx={front} rx="6" ry={radius} {...darkPaint} />
      {[-back, front - 12].map((x) => (
        <path
          key={x}
          d={`M${String(x + 6)} ${String(-radius)} v${String(2 * radius)}`}
          stroke="var(--land-near)"
        />
      ))}
      <rect
        x={-back - 8}
        y={-radius - 1}
        width="10"
        height={2 * radius + 2}
        rx="2"
        {...fittingPaint}
      />
      {[-14, 0, 14].map((y) => (
        <rect key={y} x={-back - 13} y={y - 3} width="5" height="6" {...darkPaint} />
      ))}
      {fitted.finder ? <FinderSide x={front - 52} y={-radius} /> : null}
    </g>
  );
}

/** Short, closed by a lens in front; a star diagonal at the back turns the eyepiece straight up. */
function ClosedTubeSide({ fitted }: SideProps) {
  const { front, back, radius } = tubeSizes['maksutov-cassegrain'];
  return (
    <g>
      <rect x={-back - 14} y="-8" width="12" height="16" {...fittingPaint} />
      {fitted.imagePart ? (
        <path
          d={`M${String(-back - 14)} 10 V-10 H${String(-back - 34)} V-2 L${String(-back - 22)} 10 Z`}
          {...darkPaint}
        />
      ) : null}
      {fitted.eyepiece ? (
        <>
          <rect x={-back - 31} y="-24" width="14" height="14" {...fittingPaint} />
          <rect x={-back - 33} y="-34" width="18" height="10" rx="1.5" {...darkPaint} />
        </>
      ) : null}
      <circle cx={-back - 6} cy="14" r="4" {...fittingPaint} />
      <path
        d={`M${String(-back)} ${String(-radius)} l-6 8 V${String(radius - 8)} l6 8 Z`}
        {...fittingPaint}
      />
      <rect
        x={-back}
        y={-radius}
        width={back + front - 6}
        height={2 * radius}
        rx="1.5"
        {...tubePaint}
      />
      {/* The lens bulges inward: from the side only its ring is seen. */}
      <rect
        x={front - 12}
        y={-radius - 2}
        width="12"
        height={2 * radius + 4}
        rx="2"
        {...fittingPaint}
      />
      {fitted.finder ? <FinderSide x={-back + 14} y={-radius} /> : null}
    </g>
  );
}
