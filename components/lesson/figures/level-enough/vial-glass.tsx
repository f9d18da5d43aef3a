import type { ReactNode } from 'react';
import { vialMm } from '@/lib/levelling/vial';

type Place = { eastMm: number; northMm: number };

/** A round vial from above, in millimetres about its middle: glass, circles of a degree each, the ring. */
export function VialGlass({ children }: { children: ReactNode }) {
  return (
    <g>
      <circle r={vialMm.glassRadius} className="fill-sky stroke-strong" strokeWidth="0.4" />
      {[2, 4, 6, 8, 10].map((mm) => (
        <circle
          key={mm}
          r={mm}
          className="fill-none stroke-sky-line"
          strokeWidth="0.1"
          strokeDasharray="0.5 0.5"
        />
      ))}
      <circle r={vialMm.ringRadius} className="fill-none stroke-on-sky" strokeWidth="0.28" />
      {children}
    </g>
  );
}

/** The bubble; a ghost shows where it stood before. */
export function Bubble({ place, ghost = false }: { place: Place; ghost?: boolean }) {
  const [x, y] = [place.eastMm.toFixed(3), (-place.northMm).toFixed(3)];
  return ghost ? (
    <circle
      cx={x}
      cy={y}
      r={vialMm.bubbleRadius}
      className="fill-none stroke-on-sky"
      strokeWidth="0.25"
      strokeDasharray="0.6 0.5"
    />
  ) : (
    <g>
      <circle
        cx={x}
        cy={y}
        r={vialMm.bubbleRadius}
        className="fill-sky-lamp stroke-on-sky"
        strokeWidth="0.2"
      />
      <circle cx={x} cy={y} r="0.25" className="fill-sky" />
    </g>
  );
}
