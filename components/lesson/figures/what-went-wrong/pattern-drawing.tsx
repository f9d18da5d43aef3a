import { DirectionLetters } from '../direction-letters';
import { discPoint, discRadius, type SkyPosition } from '../sky-disc';
import { pair, type PatternFacts } from './pattern-facts';

type PatternDrawingProps = { facts: PatternFacts; label: string };

/** Arrows are drawn longer than they are, to be seen: the longest about a quarter of the disc's radius. */
function timesLonger(mostDeg: number): number {
  const shown = (mostDeg / 90) * discRadius;
  return shown === 0 ? 1 : Math.max(1, Math.min(6, Math.floor(26 / shown)));
}

/** The sky from below with twelve stars, and an arrow from each to where the tube stops. */
export function PatternDrawing({ facts, label }: PatternDrawingProps) {
  const times = timesLonger(facts.mostDeg);
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[28rem] select-none"
    >
      <circle r={discRadius} className="fill-sky stroke-sky-line" strokeWidth="1.5" />
      <DirectionLetters />
      {pair.map((star, i) => (
        <AlignmentStar key={star.azimuthDeg} star={star} letter={String(i + 1)} />
      ))}
      {facts.slews.map(({ star, lands }) => (
        <Arrow
          key={`${String(star.azimuthDeg)}/${String(star.altitudeDeg)}`}
          from={star}
          to={lands}
          times={times}
        />
      ))}
      {facts.mostDeg < 0.05 ? null : (
        <text x="114" y="112" textAnchor="end" className="fill-soft text-[8px]">
          {times === 1 ? 'arrows to scale' : `arrows drawn ${String(times)} times as long`}
        </text>
      )}
    </svg>
  );
}

function AlignmentStar({ star, letter }: { star: SkyPosition; letter: string }) {
  const { x, y } = discPoint(star);
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <circle r="6.5" className="fill-none stroke-sky-line" strokeWidth="1" strokeDasharray="2 2" />
      <text textAnchor="middle" dominantBaseline="central" className="fill-on-sky-soft text-[8px]">
        {letter}
      </text>
    </g>
  );
}

function Arrow({ from, to, times }: { from: SkyPosition; to: SkyPosition; times: number }) {
  const a = discPoint(from);
  const end = discPoint(to);
  const b = { x: a.x + times * (end.x - a.x), y: a.y + times * (end.y - a.y) };
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [dx, dy] = length === 0 ? [0, 0] : [(b.x - a.x) / length, (b.y - a.y) / length];
  return (
    <g>
      <circle cx={a.x.toFixed(2)} cy={a.y.toFixed(2)} r="2.2" className="fill-sky-lamp" />
      {length < 1.5 ? null : (
        <path
          d={`M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}m${(-4 * dx + 2.6 * dy).toFixed(1)} ${(-4 * dy - 2.6 * dx).toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}l${(-4 * dx - 2.6 * dy).toFixed(1)} ${(-4 * dy + 2.6 * dx).toFixed(1)}`}
          className="fill-none stroke-on-sky"
          strokeWidth="1.4"
        />
      )}
    </g>
  );
}
