import { bubbleOf, legIndices, vialNow, type TripodState } from '@/lib/levelling/tripod';
import { vialMm } from '@/lib/levelling/vial';
import { degreesToRadians } from '@/lib/units/angle';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { bubbleInWords, legName, readsFromMark, vialIsCovered } from './level-words';

type VialFigureProps = { variant: LevelVariant; state: TripodState; className?: string };

/**
 * The vial as its reader sees it from above, in millimetres: with the far side of the tripod up the page,
 * or, where it is read with the head turned, with its mark up.
 */
export function VialFigure({ variant, state, className }: VialFigureProps) {
  const { site } = variant;
  const byMark = readsFromMark(variant);
  const markDeg = vialNow(site, state).markAzimuthDeg;
  const bubble = bubbleOf(site, state);
  const turnedDeg = byMark ? -markDeg : 0;
  return (
    <svg
      viewBox="-17.5 -17.5 35 35"
      role="img"
      aria-label={`The vial from above: the bubble is ${bubbleInWords(variant, state)}`}
      className={className}
    >
      <circle r="14" fill="var(--land)" stroke="var(--sky-line)" strokeWidth="0.25" />
      <circle
        r={vialMm.glassRadius}
        fill="var(--sky-low)"
        stroke="var(--on-sky-soft)"
        strokeWidth="0.3"
      />
      {vialIsCovered(variant, state) ? (
        <Covered />
      ) : (
        <g>
          <path d="M-12 0 H12 M0 -12 V12" stroke="var(--sky-line)" strokeWidth="0.08" />
          {/* Two millimetres are one degree: a fine circle for each. */}
          {[2, 6, 8, 10].map((radius) => (
            <circle
              key={radius}
              r={radius}
              fill="none"
              stroke="var(--sky-line)"
              strokeWidth="0.1"
              strokeDasharray="0.5 0.5"
            />
          ))}
          <circle r={vialMm.ringRadius} fill="none" stroke="var(--on-sky)" strokeWidth="0.28" />
          <g transform={`rotate(${String(turnedDeg)})`}>
            <g
              className="motion-safe:transition-transform motion-safe:duration-300"
              style={{
                transform: `translate(${bubble.eastMm.toFixed(3)}px, ${(-bubble.northMm).toFixed(3)}px)`,
              }}
            >
              <circle
                r={vialMm.bubbleRadius}
                fill="var(--sky-lamp)"
                fillOpacity="0.55"
                stroke="var(--sky-lamp)"
                strokeWidth="0.2"
              />
              <path d="M-0.5 0 H0.5 M0 -0.5 V0.5" stroke="var(--on-sky)" strokeWidth="0.14" />
            </g>
          </g>
        </g>
      )}
      <MarkOnRim azimuthDeg={byMark ? 0 : markDeg} named={byMark} />
      {byMark ? null : (
        <g fontSize="2.6" fontWeight="700" fill="var(--on-sky)">
          {legIndices.map((leg) => {
            const azimuth = degreesToRadians(site.legs[leg].azimuthDeg);
            return (
              <text
                key={leg}
                x={(15.9 * Math.sin(azimuth)).toFixed(2)}
                y={(-15.9 * Math.cos(azimuth)).toFixed(2)}
                textAnchor="middle"
                dominantBaseline="central"
              >
                {legName(leg)}
              </text>
            );
          })}
        </g>
      )}
    </svg>
  );
}

function Covered() {
  return (
    <g fontSize="2" fill="var(--on-sky)" textAnchor="middle">
      <circle r={vialMm.glassRadius} fill="var(--land-near)" />
      <text y="-1.4">Out of sight:</text>
      <text y="1.4">your eyes are</text>
      <text y="4.2">down at the leg</text>
    </g>
  );
}

/** A notch of the vial's own rim. */
function MarkOnRim({ azimuthDeg, named }: { azimuthDeg: number; named: boolean }) {
  return (
    <g transform={`rotate(${String(azimuthDeg)})`}>
      <path d="M0 -12 L-0.9 -13.8 H0.9 Z" fill="var(--sky-lamp)" />
      {named ? (
        <text
          y="-15.6"
          textAnchor="middle"
          dominantBaseline="central"
          fontSize="2.2"
          fontWeight="700"
          fill="var(--sky-lamp)"
        >
          mark
        </text>
      ) : null}
    </g>
  );
}
