import type { ReactNode } from 'react';
import { DirectionLetters } from '../direction-letters';
import { discRadius } from '../sky-disc';

type DiscGroundProps = { label: string; bright?: boolean; children: ReactNode };

/** The whole sky as a disc, with horizon, meridian, rings at 30° and 60°, and the four directions. */
export function DiscGround({ label, bright = false, children }: DiscGroundProps) {
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[30rem] select-none"
    >
      <circle
        r={discRadius}
        className={bright ? 'fill-sky-low stroke-sky-line' : 'fill-sky stroke-sky-line'}
        strokeWidth="1.5"
      />
      {[30, 60].map((altitudeDeg) => (
        <circle
          key={altitudeDeg}
          r={discRadius - (altitudeDeg / 90) * discRadius}
          className="fill-none stroke-sky-line"
          strokeWidth="0.5"
          strokeDasharray="2 3"
        />
      ))}
      <line y1={-discRadius} y2={discRadius} className="stroke-sky-line" strokeWidth="0.5" />
      <text
        x="3"
        y={discRadius - 5}
        className="fill-on-sky-soft stroke-sky text-[6.5px] [paint-order:stroke]"
        strokeWidth="2"
      >
        meridian
      </text>
      <DirectionLetters />
      {children}
    </svg>
  );
}
