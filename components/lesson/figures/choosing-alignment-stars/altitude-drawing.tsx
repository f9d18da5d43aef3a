import type { AltitudeFacts } from './altitude-facts';

type AltitudeDrawingProps = { altitudeDeg: number; facts: AltitudeFacts; label: string };

const reach = 150;
/** A layer of air drawn thick enough to be seen: the real one is far thinner beside the Earth. */
const airHeight = 26;

const at = (altitudeDeg: number, distance: number) => {
  const altitude = (altitudeDeg * Math.PI) / 180;
  return { x: distance * Math.cos(altitude), y: -distance * Math.sin(altitude) };
};

function bandPath(fromDeg: number, toDeg: number): string {
  const from = at(fromDeg, reach);
  const to = at(toDeg, reach);
  return `M0 0 L${from.x} ${from.y} A${reach} ${reach} 0 0 0 ${to.x} ${to.y} Z`;
}

/** The sky from the side with the band that serves, the air, and how far the azimuth swings. */
export function AltitudeDrawing({ altitudeDeg, facts, label }: AltitudeDrawingProps) {
  const star = at(altitudeDeg, reach);
  // Where the line of sight leaves the layer; along the ground it stays in it to the picture's edge.
  const slant = airHeight / Math.max(Math.sin((altitudeDeg * Math.PI) / 180), airHeight / reach);
  const leaves = at(altitudeDeg, Math.min(slant, reach));
  return (
    <svg
      viewBox="-14 -170 290 196"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[36rem]"
    >
      <path d={bandPath(0, 90)} className="fill-sky stroke-sky-line" strokeWidth="0.8" />
      <path d={bandPath(20, 70)} className="fill-sky-low" />
      <path
        d={`M0 0 H${reach} V${-airHeight} H0 Z`}
        className="fill-on-sky opacity-20 print:opacity-15"
      />
      {[20, 70].map((limit) => {
        const end = at(limit, reach + 4);
        return (
          <g key={limit}>
            <line
              x1="0"
              y1="0"
              x2={end.x}
              y2={end.y}
              className="stroke-sky-line"
              strokeWidth="0.8"
              strokeDasharray="4 3"
            />
            <text x={end.x + 3} y={end.y} className="fill-ink text-[9px]">
              {limit}°
            </text>
          </g>
        );
      })}
      <line x1="-14" y1="0" x2={reach + 14} y2="0" className="stroke-strong" strokeWidth="2" />
      <line x1="0" y1="0" x2={star.x} y2={star.y} className="stroke-sky-lamp" strokeWidth="1" />
      <line
        x1="0"
        y1="0"
        x2={leaves.x}
        y2={leaves.y}
        className="stroke-sky-lamp"
        strokeWidth="4"
        strokeLinecap="round"
      />
      <path
        transform={`translate(${star.x.toFixed(2)} ${star.y.toFixed(2)})`}
        d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
        className="fill-sky-lamp stroke-ink"
        strokeWidth="0.8"
      />
      <text x="40" y="14" className="fill-soft text-[9px]">
        level horizon
      </text>
      <Swing degrees={facts.swingIn10MinDeg} />
    </svg>
  );
}

/** The mount from above: the wedge that its azimuth sweeps in ten minutes. */
function Swing({ degrees }: { degrees: number }) {
  const radius = 38;
  const swept = Math.min(degrees, 359.9);
  const end = {
    x: radius * Math.sin((swept * Math.PI) / 180),
    y: -radius * Math.cos((swept * Math.PI) / 180),
  };
  return (
    <g transform="translate(222 -96)">
      <circle r={radius} className="fill-sunken stroke-strong" strokeWidth="1" />
      <path
        d={`M0 0 V${-radius} A${radius} ${radius} 0 ${swept > 180 ? 1 : 0} 1 ${end.x.toFixed(2)} ${end.y.toFixed(2)} Z`}
        className="fill-[var(--lamp)] stroke-ink"
        strokeWidth="0.8"
      />
      <text y={radius + 13} textAnchor="middle" className="fill-ink text-[9px]">
        azimuth swings {degrees < 10 ? degrees.toFixed(1) : Math.round(degrees)}°
      </text>
      <text y={radius + 24} textAnchor="middle" className="fill-ink text-[9px]">
        in ten minutes
      </text>
    </g>
  );
}
