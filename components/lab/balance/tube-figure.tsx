import { darkPaint, fittingPaint, tubePaint } from '@/components/telescope/paint';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { TubeParts } from './tube-parts-figure';

/** One unit of the drawing is this long on the telescope, as in components/telescope. */
export const mmPerUnit = 3;

type TubeFigureProps = { variant: BalanceVariant; on: readonly string[]; clampMm: number };

/**
 * The tube from its right, level, front to the right; the altitude axis is at (0, 0), where the clamp
 * grips the bar. It is as long and as wide as the variant says, so that sliding it moves it truly.
 */
export function TubeFigure({ variant, on, clampMm }: TubeFigureProps) {
  const xAt = (alongMm: number): number => (clampMm - alongMm) / mmPerUnit;
  const radius = variant.tubeDiameterMm / 2 / mmPerUnit;
  const front = xAt(variant.frontMm);
  const back = xAt(variant.frontMm + variant.tubeLengthMm);
  const axisY = -variant.tube.aboveAxisMm / mmPerUnit;
  const { leastMm, mostMm } = variant.bar;
  return (
    <g>
      <g transform={`translate(0 ${axisY.toFixed(2)})`}>
        <TubeEnds variant={variant} front={front} back={back} radius={radius} />
        <TubeParts variant={variant} on={on} xAt={xAt} radius={radius} />
        <Tape variant={variant} xAt={xAt} y={radius - 7} />
      </g>
      {/* The bar, as long as the clamp can reach and half a clamp more at either end. */}
      <rect
        x={xAt(mostMm + 25)}
        y="-5"
        width={(mostMm - leastMm + 50) / mmPerUnit}
        height="10"
        rx="1"
        {...fittingPaint}
      />
    </g>
  );
}

type TubeEndsProps = { variant: BalanceVariant; front: number; back: number; radius: number };

/** The bare tube: what its kind has at either end. */
function TubeEnds({ variant, front, back, radius }: TubeEndsProps) {
  const body = (
    <rect x={back} y={-radius} width={front - back} height={2 * radius} rx="1.5" {...tubePaint} />
  );
  switch (variant.tubeType) {
    case 'refractor':
      return (
        <g>
          <rect x={back - 24} y="-8" width="26" height="16" {...fittingPaint} />
          <circle cx={back - 12} cy="12" r="5" {...fittingPaint} />
          {body}
          <rect
            x={front - 26}
            y={-radius - 3}
            width="26"
            height={2 * radius + 6}
            rx="1.5"
            {...fittingPaint}
          />
        </g>
      );
    case 'reflector': {
      const focuser = front - 90 / mmPerUnit;
      return (
        <g>
          <path
            d={`M${String(focuser - 13)} ${String(-radius + 3)} v-12 h26 v12 Z`}
            {...fittingPaint}
          />
          <rect x={focuser - 7} y={-radius - 14} width="14" height="8" {...fittingPaint} />
          {body}
          <ellipse cx={front} rx="6" ry={radius} {...darkPaint} />
          <rect
            x={back - 8}
            y={-radius - 1}
            width="10"
            height={2 * radius + 2}
            rx="2"
            {...fittingPaint}
          />
        </g>
      );
    }
    case 'maksutov-cassegrain':
      return (
        <g>
          <rect x={back - 10} y="-8" width="12" height="16" {...fittingPaint} />
          {body}
          <rect
            x={front - 12}
            y={-radius - 2}
            width="12"
            height={2 * radius + 4}
            rx="2"
            {...fittingPaint}
          />
        </g>
      );
  }
}

/** The tape along the tube's lower edge: a tick every 10 mm, a longer one with its figure every 100. */
function Tape({
  variant,
  xAt,
  y,
}: {
  variant: BalanceVariant;
  xAt: (alongMm: number) => number;
  y: number;
}) {
  const first = Math.ceil(variant.frontMm / 10) * 10;
  const last = variant.frontMm + variant.tubeLengthMm;
  const ticks = Array.from(
    { length: Math.floor((last - first) / 10) + 1 },
    (_, i) => first + 10 * i,
  );
  return (
    <g>
      <path
        d={ticks
          .map((mm) => `M${xAt(mm).toFixed(2)} ${String(y + 7)} v${mm % 100 === 0 ? '-5' : '-2.5'}`)
          .join(' ')}
        stroke="var(--land-near)"
        strokeWidth="0.7"
      />
      {ticks
        .filter((mm) => mm % 100 === 0)
        .map((mm) => (
          <text
            key={mm}
            x={xAt(mm).toFixed(2)}
            y={y + 1}
            textAnchor="middle"
            fontSize="6.5"
            fill="var(--land-near)"
          >
            {mm}
          </text>
        ))}
    </g>
  );
}
