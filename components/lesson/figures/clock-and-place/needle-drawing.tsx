import { trueBearingDeg } from '@/lib/clock/needle';

type NeedleDrawingProps = { declinationDeg: number; bearingDeg: number; label: string };

const dialRadius = 72;
const rimRadius = 92;

/** Up the page is true north; azimuth goes clockwise, as on a map. */
const at = (azimuthDeg: number, radius: number) => {
  const azimuth = (azimuthDeg * Math.PI) / 180;
  return { x: radius * Math.sin(azimuth), y: -radius * Math.cos(azimuth) };
};

const letters = ['N', 'E', 'S', 'W'] as const;

/** A compass from above: its dial turns with the needle, the ground's own directions stand round it. */
export function NeedleDrawing({ declinationDeg, bearingDeg, label }: NeedleDrawingProps) {
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[26rem] select-none"
    >
      <circle r={rimRadius} className="fill-sunken stroke-strong" strokeWidth="1" />
      <circle r={dialRadius} className="fill-panel stroke-strong" strokeWidth="1" />
      {letters.map((letter, index) => {
        const { x, y } = at(90 * index, rimRadius + 11);
        return (
          <text
            key={letter}
            x={x}
            y={y}
            textAnchor="middle"
            dominantBaseline="central"
            className="fill-ink text-[10px] font-semibold"
          >
            {letter}
          </text>
        );
      })}
      <line y1="0" y2={-rimRadius} className="stroke-ink" strokeWidth="1" strokeDasharray="4 3" />
      <text x="3" y={-rimRadius + 14} className="fill-ink text-[8px]">
        true north
      </text>
      {Array.from({ length: 36 }, (_, index) => {
        const azimuthDeg = 10 * index + declinationDeg;
        const outer = at(azimuthDeg, dialRadius);
        const inner = at(azimuthDeg, dialRadius - (index % 3 === 0 ? 7 : 4));
        const figure = at(azimuthDeg, dialRadius - 14);
        return (
          <g key={index}>
            <line
              x1={inner.x.toFixed(2)}
              y1={inner.y.toFixed(2)}
              x2={outer.x.toFixed(2)}
              y2={outer.y.toFixed(2)}
              className="stroke-strong"
              strokeWidth="0.8"
            />
            {index % 3 === 0 ? (
              <text
                x={figure.x.toFixed(2)}
                y={figure.y.toFixed(2)}
                textAnchor="middle"
                dominantBaseline="central"
                className="fill-soft text-[7.5px]"
              >
                {10 * index}
              </text>
            ) : null}
          </g>
        );
      })}
      <g transform={`rotate(${String(declinationDeg)})`}>
        <path d="M0-50 5 0H-5Z" className="fill-ink" />
        <path d="M0 50 5 0H-5Z" className="fill-panel stroke-ink" strokeWidth="1" />
        <text x="9" y="-26" className="fill-ink text-[7.5px] font-semibold">
          needle
        </text>
      </g>
      <g transform={`rotate(${trueBearingDeg(bearingDeg, declinationDeg).toFixed(2)})`}>
        <rect
          x="-5"
          y={-rimRadius}
          width="10"
          height={2 * rimRadius - 40}
          rx="2"
          className="fill-none stroke-accent"
          strokeWidth="2"
        />
        <text
          y={-rimRadius + 20}
          textAnchor="middle"
          className="fill-accent stroke-panel text-[8px] font-semibold [paint-order:stroke]"
          strokeWidth="2.5"
        >
          tube
        </text>
      </g>
    </svg>
  );
}
