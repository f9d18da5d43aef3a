import { darkPaint, mountPaint } from '@/components/telescope/paint';
import type { TripodSite, TripodState } from '@/lib/levelling/tripod';
import { legName } from './level-words';
import type { LegShape, Point } from './tripod-shape';

type LegFigureProps = { shape: LegShape; site: TripodSite; state: TripodState };

/** One leg in its two parts, its lock, its foot and the ground under it. */
export function LegFigure({ shape, site, state }: LegFigureProps) {
  const { leg, hip, joint, foot, ground } = shape;
  const { lengthMm, open } = state.legs[leg];
  const soft = site.legs[leg].sinksMm > 0;
  return (
    <g>
      <Ground at={ground} soft={soft} />
      <Bar from={joint} to={foot} width={5} />
      <path
        d={`M${point(foot, -5, -3)} L${point(foot, 5, -3)} L${point(foot, 0, 4)} Z`}
        {...darkPaint}
      />
      <Bar from={hip} to={joint} width={10} />
      {/* The lever lies along the leg when locked and stands off when open. */}
      <g transform={`translate(${point(joint)})`}>
        <rect x="-8" y="-6" width="16" height="12" rx="2" {...darkPaint} />
        <path
          d={open ? 'M6 0 L26 -12' : 'M6 -2 L8 14'}
          stroke={open ? 'var(--sky-lamp)' : 'var(--on-sky-soft)'}
          strokeWidth="5"
          strokeLinecap="round"
        />
      </g>
      <g transform={`translate(${point(foot, 0, 21)})`} className="select-none">
        <circle r="11" fill="var(--land-near)" stroke="var(--sky-line)" strokeWidth="1.4" />
        <text
          textAnchor="middle"
          dominantBaseline="central"
          fontSize="16"
          fontWeight="700"
          fill="var(--on-sky)"
        >
          {legName(leg)}
        </text>
        <text
          y="23"
          textAnchor="middle"
          fontSize="15"
          fill="var(--on-sky-soft)"
          className="font-figures"
        >
          {lengthMm} mm{open ? ', open' : ''}
        </text>
      </g>
    </g>
  );
}

const point = ({ x, y }: Point, dx = 0, dy = 0): string =>
  `${(x + dx).toFixed(2)} ${(y + dy).toFixed(2)}`;

function Bar({ from, to, width }: { from: Point; to: Point; width: number }) {
  const ends = `M${point(from)} L${point(to)}`;
  return (
    <g strokeLinecap="round">
      <path d={ends} stroke={mountPaint.stroke} strokeWidth={width + 3} />
      <path d={ends} stroke={mountPaint.fill} strokeWidth={width} />
    </g>
  );
}

/** A rise of the ground as high as it is there; soft turf has blades and says so. */
function Ground({ at, soft }: { at: Point; soft: boolean }) {
  return (
    <g transform={`translate(${point(at)})`}>
      <path
        d="M-34 22 Q-26 0 0 -1 Q26 0 34 22 Z"
        fill="var(--land-near)"
        stroke="var(--sky-line)"
        strokeWidth="1"
      />
      {soft ? (
        <g>
          <path
            d="M-22 6 l-3 -9 m5 8 l0 -10 m7 8 l3 -9 m16 12 l-2 -10 m6 12 l4 -9 m-38 2 l-1 -8"
            stroke="var(--on-sky-soft)"
            strokeWidth="1.4"
            fill="none"
          />
          <text x="30" y="4" fontSize="14" fill="var(--on-sky-soft)">
            soft
          </text>
        </g>
      ) : null}
    </g>
  );
}
