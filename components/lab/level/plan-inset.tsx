import { legIndices, vialNow, type TripodState } from '@/lib/levelling/tripod';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { legName } from './level-words';

type PlanInsetProps = { variant: LevelVariant; state: TripodState };

/** Legs and the vial's mark straight from above: how the one lies to the other. */
export function PlanInset({ variant: { site }, state }: PlanInsetProps) {
  return (
    <svg
      viewBox="-60 -60 120 120"
      role="img"
      aria-label="From above: the three legs, and which way the vial’s mark points"
      className="aspect-square h-2/5 max-h-40 min-h-24 sm:h-auto sm:w-40"
    >
      {legIndices.map((leg) => (
        <g key={leg} transform={`rotate(${String(site.legs[leg].azimuthDeg)})`}>
          <path d="M0 -10 V-38" stroke="var(--sky-line)" strokeWidth="5" strokeLinecap="round" />
          <text
            transform={`translate(0 -49) rotate(${String(-site.legs[leg].azimuthDeg)})`}
            textAnchor="middle"
            dominantBaseline="central"
            fontSize="13"
            fontWeight="700"
            fill="var(--on-sky)"
          >
            {legName(leg)}
          </text>
        </g>
      ))}
      <circle r="12" fill="var(--sky-low)" stroke="var(--on-sky-soft)" strokeWidth="1.5" />
      <g transform={`rotate(${String(vialNow(site, state).markAzimuthDeg)})`}>
        <path
          d="M0 0 V-24 M-4 -19 L0 -26 L4 -19"
          fill="none"
          stroke="var(--sky-lamp)"
          strokeWidth="2.5"
        />
      </g>
      <text y="57" textAnchor="middle" fontSize="11" fill="var(--on-sky-soft)">
        arrow: the vial’s mark
      </text>
    </svg>
  );
}
