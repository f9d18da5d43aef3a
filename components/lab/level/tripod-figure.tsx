import { darkPaint, fittingPaint, mountPaint } from '@/components/telescope/paint';
import { TubeSide } from '@/components/telescope/tube-side';
import type { TripodSite, TripodState } from '@/lib/levelling/tripod';
import { vialNow } from '@/lib/levelling/tripod';
import { degreesToRadians } from '@/lib/units/angle';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { LegFigure } from './leg-figure';
import { headCircle, tripodShape, type TripodShape } from './tripod-shape';

/** What a tripod takes of the page, from its shortest to its longest, with a tube on top. */
export const tripodViewBox = '-180 -316 360 450';

type TripodFigureProps = {
  variant: Pick<LevelVariant, 'site' | 'tubeType'>;
  state: TripodState;
  /** Shows which way the vial's mark points. */
  showsMark: boolean;
};

/** The tripod on its ground, the mount's arm and the tube; for any drawing on a dark surface. */
export function TripodFigure({ variant: { site, tubeType }, state, showsMark }: TripodFigureProps) {
  const shape = tripodShape(site, state);
  const top = shape.head(0, 0, 12);
  return (
    <g>
      <path d="M-1600 -66 H-400 Q-90 -84 20 -72 T400 -66 H1600 V600 H-1600 Z" fill="var(--land)" />
      {shape.legs.map((leg) => (
        <LegFigure key={leg.leg} shape={leg} site={site} state={state} />
      ))}
      <path d={headCircle(shape, 84, -24)} {...mountPaint} />
      <path d={headCircle(shape, 84, 6)} {...fittingPaint} />
      <g
        transform={`translate(${top.x.toFixed(2)} ${top.y.toFixed(2)}) rotate(${shape.leansDeg.toFixed(2)})`}
      >
        <path d="M-20 0 H20 L16 -14 H-16 Z" {...mountPaint} />
        <path d="M-11 -14 V-66 A11 11 0 0 1 11 -66 V-14 Z" {...mountPaint} />
        {state.tubeOn ? (
          <g transform="translate(0 -66)">
            <TubeSide kind={tubeType} />
            <rect x="-34" y="-5" width="68" height="10" rx="1" {...fittingPaint} />
            <circle r="6" {...darkPaint} />
          </g>
        ) : (
          <circle cy="-66" r="6" {...darkPaint} />
        )}
      </g>
      {state.held ? <Hands x={top.x} y={top.y - 34} /> : null}
      {showsMark ? <Mark site={site} state={state} shape={shape} /> : null}
    </g>
  );
}

/** Two open hands, one on either side of the arm. */
function Hands({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`} aria-hidden="true">
      {[-1, 1].map((side) => (
        <path
          key={side}
          transform={`scale(${String(side)} 1)`}
          d="M34 10 Q22 12 13 4 M34 4 Q22 3 13 -2 M34 -2 Q24 -6 14 -8 M34 14 Q48 8 60 18"
          fill="none"
          stroke="var(--sky-lamp)"
          strokeWidth="4"
          strokeLinecap="round"
        />
      ))}
    </g>
  );
}

/** An arrow along the head from its middle to where the vial's mark points. */
function Mark({
  site,
  state,
  shape,
}: {
  site: TripodSite;
  state: TripodState;
  shape: TripodShape;
}) {
  const towards = degreesToRadians(vialNow(site, state).markAzimuthDeg);
  const at = (radiusMm: number) =>
    shape.head(radiusMm * Math.sin(towards), radiusMm * Math.cos(towards), 8);
  const [from, to, text] = [at(86), at(190), at(250)];
  return (
    <g>
      <path
        d={`M${from.x.toFixed(2)} ${from.y.toFixed(2)} L${to.x.toFixed(2)} ${to.y.toFixed(2)}`}
        stroke="var(--sky-lamp)"
        strokeWidth="3"
      />
      <circle cx={to.x} cy={to.y} r="4.5" fill="var(--sky-lamp)" />
      <text
        x={text.x.toFixed(2)}
        y={text.y.toFixed(2)}
        textAnchor="middle"
        dominantBaseline="central"
        fontSize="13"
        fontWeight="700"
        fill="var(--sky-lamp)"
      >
        mark
      </text>
    </g>
  );
}
