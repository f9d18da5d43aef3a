import { FinderSide } from '@/components/telescope/finder-side';
import { darkPaint, fittingPaint } from '@/components/telescope/paint';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';

type TubePartsProps = {
  variant: BalanceVariant;
  on: readonly string[];
  /** Where a place of the tape lies in the drawing. */
  xAt: (alongMm: number) => number;
  /** Half the tube's width in the drawing. */
  radius: number;
};

/** Everything that is on the tube, each where its weight acts; the tube's axis is at y = 0. */
export function TubeParts({ variant, on, xAt, radius }: TubePartsProps) {
  const { tubeType } = variant;
  const at = (id: string): number | null => {
    const part = variant.parts.find((one) => one.id === id);
    return part !== undefined && on.includes(id) ? xAt(part.alongMm) : null;
  };
  const eyepieceX = at('eyepiece-25') ?? at('eyepiece-9');
  const phoneX = at('phone-adapter');
  const turned = at('prism') ?? at('diagonal');
  const shieldX = at('dew-shield');
  const weightX = at('weight-front') ?? at('weight-back');
  const finderX = at('finder');
  const frontX = xAt(variant.frontMm);
  // Over the reflector's wall; above the prism or diagonal that stands behind the other tubes.
  const seatY = tubeType === 'reflector' ? -radius - 12 : -8;
  const long = on.includes('eyepiece-25') ? 14 : 10;
  return (
    <g>
      {shieldX === null ? null : (
        <rect
          x={frontX - 6}
          y={-radius - 4}
          width={2 * (shieldX - frontX) + 6}
          height={2 * radius + 8}
          rx="1.5"
          {...fittingPaint}
        />
      )}
      {finderX === null ? null : <FinderSide x={finderX} y={-radius} />}
      {turned === null ? null : (
        <path
          d={`M${String(turned + 14)} 9 V-9 H${String(turned - 12)} V0 L${String(turned - 4)} 9 Z`}
          {...darkPaint}
        />
      )}
      {eyepieceX === null ? null : (
        <g transform={`translate(${String(eyepieceX)} ${String(seatY)})`}>
          <rect x="-6" y={-long} width="12" height={long} {...fittingPaint} />
          <rect x="-8" y={-long - 8} width="16" height="8" rx="1.5" {...darkPaint} />
        </g>
      )}
      {phoneX === null ? null : (
        <g transform={`translate(${String(phoneX)} ${String(seatY - 24)})`}>
          <rect x="-9" y="-8" width="18" height="8" {...fittingPaint} />
          <rect x="-26" y="-13" width="52" height="5" rx="2" {...darkPaint} />
        </g>
      )}
      {weightX === null ? null : (
        <g>
          <rect x={weightX - 3} y={-radius - 2} width="6" height={2 * radius + 4} {...darkPaint} />
          <rect x={weightX - 11} y={radius} width="22" height="13" rx="2" {...fittingPaint} />
        </g>
      )}
    </g>
  );
}
