import { torqueNm, type ClampedTube } from '@/lib/balance/torque';
import type { AltitudeRange } from '@/lib/balance/holding';
import type { Moves } from '@/lib/balance/tube-bench';

type TorquePlotProps = {
  holdingTorqueNm: number;
  range: AltitudeRange;
  /** The tube as it is; null where only trials tell. */
  tube: ClampedTube | null;
  /** The tube as it should be, dashed. */
  best?: ClampedTube | null;
  trials?: readonly { altitudeDeg: number; moves: Moves }[];
  /** Where the tube points now. */
  altitudeDeg?: number;
  /** What the plot shows, in words. */
  label: string;
  className?: string;
};

/** The plot's inner box in drawing units: altitude to the right, a pull on the front upward. */
const left = 50;
const right = 300;
const middle = 62;
const half = 44;
/** The plot reaches this many times the holding torque either way; beyond, a line runs along its edge. */
const reach = 2.2;

const xOf = (deg: number): number => left + ((right - left) * deg) / 90;

/** Torque against altitude, with the band in which the clutch holds. In the colours of its surroundings. */
export function TorquePlot(props: TorquePlotProps) {
  const { holdingTorqueNm, range, tube, best, trials = [], altitudeDeg } = props;
  const yOf = (nm: number): number =>
    middle - half * Math.max(-1, Math.min(1, nm / (reach * holdingTorqueNm)));
  const curve = (of: ClampedTube): string =>
    Array.from({ length: 46 }, (_, i) => i * 2)
      .map((deg) => `${xOf(deg).toFixed(1)},${yOf(torqueNm(of, deg)).toFixed(1)}`)
      .join(' ');
  const bandTop = yOf(holdingTorqueNm);
  return (
    <svg viewBox="0 0 312 124" role="img" aria-label={props.label} className={props.className}>
      <rect
        x={xOf(range.lowDeg)}
        y={middle - half}
        width={xOf(range.highDeg) - xOf(range.lowDeg)}
        height={2 * half}
        fill="currentColor"
        opacity="0.07"
      />
      <rect
        x={left}
        y={bandTop}
        width={right - left}
        height={2 * (middle - bandTop)}
        fill="currentColor"
        opacity="0.16"
      />
      <path
        d={`M${String(left)} ${String(middle - half)} V${String(middle + half)} M${String(left)} ${String(middle)} H${String(right)}`}
        stroke="currentColor"
        strokeWidth="1"
        fill="none"
      />
      <g fill="currentColor" fontSize="11.5">
        <text x="4" y={middle - half + 9}>
          front
        </text>
        <text x="4" y={middle - half + 21}>
          sinks
        </text>
        <text x="4" y={middle + half - 12}>
          back
        </text>
        <text x="4" y={middle + half}>
          sinks
        </text>
        <text x="4" y={middle + 4}>
          holds
        </text>
        {[0, 30, 60, 90].map((deg) => (
          <text key={deg} x={xOf(deg)} y={middle + half + 13} textAnchor="middle">
            {deg === 0 ? 'altitude 0' : deg}°
          </text>
        ))}
      </g>
      {best === undefined || best === null ? null : (
        <polyline
          points={curve(best)}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.6"
          strokeDasharray="5 4"
        />
      )}
      {tube === null ? null : (
        <polyline points={curve(tube)} fill="none" stroke="currentColor" strokeWidth="2.6" />
      )}
      {altitudeDeg === undefined || altitudeDeg < 0 || altitudeDeg > 90 ? null : (
        <path
          d={`M${xOf(altitudeDeg).toFixed(1)} ${String(middle - half)} v${String(2 * half)}`}
          stroke="currentColor"
          strokeDasharray="2 3"
        />
      )}
      {trials.map(({ altitudeDeg: at, moves }, index) => (
        <TrialMark key={index} x={xOf(at)} moves={moves} />
      ))}
    </svg>
  );
}

/** Held: a dot in the band. Sank: an arrow head outside of it, the way the front went. */
function TrialMark({ x, moves }: { x: number; moves: Moves }) {
  const y = moves === 'holds' ? middle : moves === 'front' ? middle - 34 : middle + 34;
  if (moves === 'holds') return <circle cx={x} cy={y} r="4" fill="currentColor" />;
  const way = moves === 'front' ? 1 : -1;
  return (
    <path
      d={`M${x.toFixed(1)} ${String(y + 6 * way)} l-5 ${String(-9 * way)} h10 Z`}
      fill="currentColor"
    />
  );
}
