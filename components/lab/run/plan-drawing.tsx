import { PlanView } from '@/components/telescope/plan-view';
import type { TubeType } from '@/lib/optics/image-orientation';

const tens = Array.from({ length: 36 }, (_, index) => index * 10);

type PlanDrawingProps = { tubeType: TubeType; bearingDeg: number; altitudeDeg: number };

/** The telescope from above, over a compass whose needle points up the page. */
export function PlanDrawing({ tubeType, bearingDeg, altitudeDeg }: PlanDrawingProps) {
  return (
    <svg viewBox="-150 -150 300 300" aria-hidden="true" className="block size-full">
      <circle r="128" fill="var(--sky-low)" fillOpacity="0.35" />
      <circle r="128" fill="none" stroke="var(--sky-line)" strokeWidth="1.5" />
      {tens.map((angle) => (
        <g key={angle} transform={`rotate(${String(angle)})`}>
          <path
            d={`M0 -128 V${angle % 30 === 0 ? '-116' : '-121'}`}
            stroke="var(--sky-line)"
            strokeWidth={angle % 30 === 0 ? 2 : 1.2}
          />
          {angle % 30 === 0 && angle !== 0 ? (
            <text
              transform={`translate(0 -138) rotate(${String(-angle)})`}
              dominantBaseline="central"
              textAnchor="middle"
              fontSize="11"
              fill="var(--on-sky-soft)"
              className="font-figures"
            >
              {angle}
            </text>
          ) : null}
        </g>
      ))}
      <PlanView kind={tubeType} bearingDeg={bearingDeg} altitudeDeg={altitudeDeg} />
      {/* Where the tube faces, read off at the rim. */}
      <g transform={`rotate(${String(bearingDeg)})`}>
        <path d="M0 -106 V-126" stroke="var(--on-sky)" strokeWidth="2" strokeDasharray="3 4" />
        <path d="M-6 -118 L0 -128 L6 -118" fill="none" stroke="var(--on-sky)" strokeWidth="2.4" />
      </g>
      {/* The needle: it points along the magnetic field, whatever is turned. */}
      <path d="M0 -112 L5 -8 H-5 Z" fill="var(--sky-lamp)" stroke="var(--land-near)" />
      <path
        d="M0 112 L5 8 H-5 Z"
        fill="var(--land)"
        stroke="var(--on-sky-soft)"
        strokeWidth="1.4"
      />
      <circle r="9" fill="var(--land)" stroke="var(--sky-lamp)" strokeWidth="1.6" />
      <text y="-137" textAnchor="middle" fontSize="13" fontWeight="700" fill="var(--sky-lamp)">
        needle
      </text>
    </svg>
  );
}
