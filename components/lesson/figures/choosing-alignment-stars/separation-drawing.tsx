import type { ReactNode } from 'react';
import type { PairFacts } from './pair-facts';
import { DirectionLetters } from '../direction-letters';
import { discPoint, discRadius, type SkyPosition } from '../sky-disc';

type SeparationDrawingProps = {
  stars: readonly [SkyPosition, SkyPosition];
  facts: PairFacts;
  label: string;
  /** The handles that the moving figure lays over the stars. */
  children?: ReactNode;
};

const ringRadius = (altitudeDeg: number) => ((90 - altitudeDeg) / 90) * discRadius;

/** The sky from below with two stars and the targets; full dots are likely in the eyepiece. */
export function SeparationDrawing({ stars, facts, label, children }: SeparationDrawingProps) {
  const points = [discPoint(stars[0]), discPoint(stars[1])] as const;
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[30rem] touch-pan-y select-none"
    >
      <circle r={discRadius} className="fill-sky stroke-sky-line" strokeWidth="1.5" />
      {[30, 60].map((altitudeDeg) => (
        <circle
          key={altitudeDeg}
          r={ringRadius(altitudeDeg)}
          className="fill-none stroke-sky-line"
          strokeWidth="0.5"
          strokeDasharray="2 3"
        />
      ))}
      <DirectionLetters />
      {facts.targets.map((target) => {
        const { x, y } = discPoint(target);
        return (
          <circle
            key={`${target.azimuthDeg.toFixed(2)}/${String(target.altitudeDeg)}`}
            cx={x.toFixed(2)}
            cy={y.toFixed(2)}
            r={target.likely ? 1.9 : 1.5}
            strokeWidth="0.6"
            className={target.likely ? 'fill-on-sky stroke-on-sky' : 'fill-none stroke-on-sky-soft'}
          />
        );
      })}
      {[30, 60].map((altitudeDeg) => (
        <text
          key={altitudeDeg}
          y={-ringRadius(altitudeDeg)}
          textAnchor="middle"
          dominantBaseline="central"
          className="fill-on-sky-soft stroke-sky text-[6.5px] [paint-order:stroke]"
          strokeWidth="3"
        >
          {altitudeDeg}°
        </text>
      ))}
      <line
        x1={points[0].x}
        y1={points[0].y}
        x2={points[1].x}
        y2={points[1].y}
        className="stroke-sky-lamp"
        strokeWidth="1"
        strokeDasharray="4 2"
      />
      {points.map(({ x, y }, i) => (
        <g key={i === 0 ? 'A' : 'B'} transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}>
          <path
            d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
            className="fill-sky-lamp stroke-sky"
            strokeWidth="0.8"
          />
          <text
            x="0"
            y="-9"
            textAnchor="middle"
            className="fill-sky-lamp stroke-sky text-[9px] font-bold [paint-order:stroke]"
            strokeWidth="2"
          >
            {i === 0 ? 'A' : 'B'}
          </text>
        </g>
      ))}
      {children}
    </svg>
  );
}
