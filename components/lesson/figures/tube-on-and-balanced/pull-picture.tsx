import { pullShare, type RaisedTube } from './tube-facts';

type PullPictureProps = { tube: RaisedTube; altitudeDeg: number; label: string };

const plot = { left: 58, right: 316, middle: 84, half: 66 };
/** The plot reaches this many times what the clutch holds; beyond, the line runs along its edge. */
const reach = 2.4;
const xOf = (deg: number): number => plot.left + ((plot.right - plot.left) * deg) / 90;
const yOf = (share: number): number =>
  plot.middle - plot.half * Math.max(-1, Math.min(1, share / reach));

/** How hard a tube's weight pulls at every altitude, and the band that the clutch holds. */
export function PullPicture({ tube, altitudeDeg, label }: PullPictureProps) {
  const curve = Array.from({ length: 46 }, (_, i) => 2 * i)
    .map((deg) => `${xOf(deg).toFixed(1)},${yOf(pullShare(tube, deg)).toFixed(1)}`)
    .join(' ');
  const now = { x: xOf(altitudeDeg), y: yOf(pullShare(tube, altitudeDeg)) };
  return (
    <svg
      viewBox="0 0 330 178"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[36rem]"
    >
      <rect
        x={plot.left}
        y={yOf(1)}
        width={plot.right - plot.left}
        height={yOf(-1) - yOf(1)}
        className="fill-sunken stroke-strong"
        strokeWidth="1"
      />
      <path
        d={`M${String(plot.left)} ${String(plot.middle)} H${String(plot.right)}`}
        className="stroke-strong"
        strokeWidth="1"
        strokeDasharray="4 3"
      />
      <g className="fill-ink text-[12px]">
        <text x="2" y={plot.middle - plot.half + 10}>
          front sinks
        </text>
        <text x="2" y={plot.middle + 4}>
          stays
        </text>
        <text x="2" y={plot.middle + plot.half}>
          back sinks
        </text>
        {[0, 30, 60, 90].map((deg) => (
          <text key={deg} x={xOf(deg)} y="172" textAnchor="middle">
            {deg}°
          </text>
        ))}
      </g>
      <polyline points={curve} className="fill-none stroke-ink" strokeWidth="2.5" />
      <path
        d={`M${now.x.toFixed(1)} ${String(plot.middle - plot.half)} V${String(plot.middle + plot.half)}`}
        className="stroke-strong"
        strokeDasharray="2 3"
      />
      <circle
        cx={now.x.toFixed(1)}
        cy={now.y.toFixed(1)}
        r="6"
        className="fill-[var(--lamp)] stroke-ink"
        strokeWidth="2"
      />
    </svg>
  );
}
