import { useId } from 'react';
import type { EyepieceView } from './field-view';

type EyepieceCircleProps = {
  /** Null: no eyepiece is in. */
  view: EyepieceView | null;
  /** What is seen, for whoever cannot see the drawing. */
  label: string;
  /** Marks in the view, in radii of the field: what was said and what is right. */
  marks?: readonly { right: number; up: number; kind: 'said' | 'right' }[];
};

const r = 100;

/** A look through the eyepiece: the field to scale, the image as this telescope turns it. */
export function EyepieceCircle({ view, label, marks = [] }: EyepieceCircleProps) {
  const clip = useId();
  return (
    <svg viewBox="-108 -108 216 216" role="img" aria-label={label} className="size-full">
      <clipPath id={clip}>
        <circle r={r} />
      </clipPath>
      <circle r={r} className="fill-[var(--land-near)] stroke-[var(--sky-line)]" strokeWidth={3} />
      {view === null ? (
        <text textAnchor="middle" className="fill-[var(--on-sky-soft)] text-[11px]" y={4}>
          no eyepiece is in
        </text>
      ) : (
        <g clipPath={`url(#${clip})`}>
          {view.moonRadius === null ? null : (
            <circle
              r={r * (view.moonRadius + view.blurShare / 2)}
              className="fill-[var(--on-sky-soft)]"
              opacity={0.85}
            />
          )}
          {view.lights.map((light, index) => (
            // A view's lights keep their order for as long as it is drawn.
            <circle
              key={index}
              cx={r * light.right}
              cy={-r * light.up}
              r={r * Math.max(light.radius, 0.006)}
              className="fill-[var(--on-sky)]"
              opacity={dimmed(light.radius)}
            />
          ))}
          {view.asked === null ? null : (
            <g
              transform={`translate(${String(r * view.asked.right)} ${String(-r * view.asked.up)})`}
            >
              <circle
                r={r * view.asked.radius}
                className="fill-[var(--sky-lamp)]"
                opacity={dimmed(view.asked.radius)}
              />
              <circle
                r={r * view.asked.radius + 5}
                className="fill-none stroke-[var(--sky-lamp)]"
                strokeWidth={1}
                strokeDasharray="3 3"
              />
            </g>
          )}
          <path d="M-6 0H6M0 -6V6" className="stroke-[var(--sky-line)]" strokeWidth={0.8} />
          {marks.map(({ right, up, kind }) => (
            <g key={kind} transform={`translate(${String(r * right)} ${String(-r * up)})`}>
              {kind === 'said' ? (
                <path d="M-5 -5L5 5M-5 5L5 -5" className="stroke-[var(--on-sky)]" strokeWidth={2} />
              ) : (
                <circle r={6} className="fill-none stroke-[var(--sky-lamp)]" strokeWidth={2} />
              )}
            </g>
          ))}
        </g>
      )}
    </svg>
  );
}

/** The same light over a wider disc is fainter, but never so faint that it cannot be found. */
const dimmed = (radius: number): number => Math.max(0.25, Math.min(1, (0.02 / radius) ** 0.8));
