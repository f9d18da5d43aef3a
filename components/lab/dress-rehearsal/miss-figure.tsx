import type { FieldOffset } from '@/lib/optics/image-orientation';
import { counts, linkLength, type ChainLink } from './miss-chain';

type MissFigureProps = {
  label: string;
  links: readonly ChainLink[];
  miss: FieldOffset;
  fieldRadiusArcmin: number;
};

/** Half the picture's side, in its own units. */
const half = 100;

/**
 * The star, the way the tube was moved from it, cause by cause, and the eyepiece's field about the end:
 * to scale, right along the horizon and up on the sky. Numbers are those of the table.
 */
export function MissFigure({ label, links, miss, fieldRadiusArcmin }: MissFigureProps) {
  const shown = links.filter(counts);
  const points = [...shown.flatMap(({ from, to }) => [from, to]), miss];
  const lowX = Math.min(
    0,
    miss.rightArcmin - fieldRadiusArcmin,
    ...points.map((p) => p.rightArcmin),
  );
  const highX = Math.max(
    0,
    miss.rightArcmin + fieldRadiusArcmin,
    ...points.map((p) => p.rightArcmin),
  );
  const lowY = Math.min(0, miss.upArcmin - fieldRadiusArcmin, ...points.map((p) => p.upArcmin));
  const highY = Math.max(0, miss.upArcmin + fieldRadiusArcmin, ...points.map((p) => p.upArcmin));
  const scale = (2 * half) / (1.12 * Math.max(highX - lowX, highY - lowY, 1));
  const x = (at: FieldOffset): number => (at.rightArcmin - (lowX + highX) / 2) * scale;
  const y = (at: FieldOffset): number => -(at.upArcmin - (lowY + highY) / 2) * scale;
  const star = { rightArcmin: 0, upArcmin: 0 };
  return (
    <svg
      viewBox={`${String(-half - 8)} ${String(-half - 8)} ${String(2 * half + 16)} ${String(2 * half + 16)}`}
      role="img"
      aria-label={label}
      className="on-sky block w-full max-w-[22rem] rounded-md"
    >
      <circle
        cx={x(miss)}
        cy={y(miss)}
        r={fieldRadiusArcmin * scale}
        fill="var(--land-near)"
        stroke="var(--sky-line)"
        strokeWidth="1.5"
      />
      <path
        d={`M${fixed(x(miss) - 4)} ${fixed(y(miss))} h8 M${fixed(x(miss))} ${fixed(y(miss) - 4)} v8`}
        stroke="var(--on-sky)"
        strokeWidth="1.2"
      />
      {shown.map((link, index) => (
        <Arrow
          key={link.cause ?? 'together'}
          number={index + 1}
          from={[x(link.from), y(link.from)]}
          to={[x(link.to), y(link.to)]}
          broken={link.cause === null}
          labelled={linkLength(link) * scale > 9}
        />
      ))}
      <path d={starPath(x(star), y(star))} fill="var(--sky-lamp)" stroke="var(--land-near)" />
    </svg>
  );
}

type Point = readonly [x: number, y: number];

function Arrow(arrow: {
  number: number;
  from: Point;
  to: Point;
  broken: boolean;
  labelled: boolean;
}) {
  const [[x0, y0], [x1, y1]] = [arrow.from, arrow.to];
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [ux, uy] = length === 0 ? [0, 0] : [(x1 - x0) / length, (y1 - y0) / length];
  const head = Math.min(5, length / 2);
  const barb = (side: number): string =>
    `${fixed(x1 - head * ux - side * head * 0.6 * uy)} ${fixed(y1 - head * uy + side * head * 0.6 * ux)}`;
  // Beside the arrow, to the right of its way.
  const [nx, ny] = [(x0 + x1) / 2 - 9 * uy, (y0 + y1) / 2 + 9 * ux];
  return (
    <g stroke="var(--on-sky)" fill="none" strokeWidth="1.8" strokeLinejoin="round">
      <path
        d={`M${fixed(x0)} ${fixed(y0)} L${fixed(x1)} ${fixed(y1)}`}
        strokeDasharray={arrow.broken ? '3 3' : undefined}
      />
      <path d={`M${barb(1)} L${fixed(x1)} ${fixed(y1)} L${barb(-1)}`} />
      {arrow.labelled ? (
        <text
          x={fixed(nx)}
          y={fixed(ny)}
          textAnchor="middle"
          dominantBaseline="central"
          fontSize="10"
          fontWeight="700"
          fill="var(--on-sky)"
          stroke="var(--sky)"
          strokeWidth="2.5"
          paintOrder="stroke"
        >
          {arrow.number}
        </text>
      ) : null}
    </g>
  );
}

function starPath(x: number, y: number): string {
  const points = Array.from({ length: 10 }, (_, i) => {
    const [angle, size] = [(i * Math.PI) / 5, i % 2 === 0 ? 6 : 2.6];
    return `${fixed(x + size * Math.sin(angle))} ${fixed(y - size * Math.cos(angle))}`;
  });
  return `M${points.join(' L')} Z`;
}

const fixed = (value: number): string => value.toFixed(1);
