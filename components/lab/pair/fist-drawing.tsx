import { useId } from 'react';
import { fistFolds, fistOutline } from '@/components/sky/fist-shape';
import { handPosition } from '@/components/sky/position-words';

type FistDrawingProps = { azimuthDeg: number; altitudeDeg: number };

const width = 320;
const height = 156;
const ground = 130;

function Fist({
  x,
  y,
  size,
  half,
  clipId,
}: {
  x: number;
  y: number;
  size: number;
  half: boolean;
  clipId: string;
}) {
  return (
    <g
      transform={`translate(${x} ${y}) scale(${size / 100})`}
      clipPath={half ? `url(#${clipId})` : undefined}
      opacity={half ? 0.85 : 1}
    >
      <path
        d={fistOutline}
        fill="var(--sky-lamp)"
        fillOpacity="0.16"
        stroke="var(--sky-lamp)"
        strokeWidth="3.4"
      />
      <path
        d={fistFolds}
        fill="none"
        stroke="var(--sky-lamp)"
        strokeWidth="2.4"
        strokeOpacity="0.6"
      />
    </g>
  );
}

/** Counts whole fists and a last half one. */
const counted = (fists: number): { half: boolean }[] => [
  ...Array.from({ length: Math.floor(fists) }, () => ({ half: false })),
  ...(fists % 1 === 0 ? [] : [{ half: true }]),
];

/**
 * Where a light stands, as an outstretched arm would measure it: fists along the ground from the
 * nearest signpost, then fists stacked up to it. The words beside it say the same.
 */
export function FistDrawing({ azimuthDeg, altitudeDeg }: FistDrawingProps) {
  const id = useId();
  const { fistsUp, fistsRight, signpost } = handPosition(azimuthDeg, altitudeDeg);
  const size = Math.min(24, 112 / Math.max(1, fistsUp));
  const post = width / 2 - (fistsRight * size) / 2;
  const column = post + fistsRight * size;
  const top = ground - fistsUp * size;
  const leftHalf = `${id}-left`;
  const rightHalf = `${id}-right`;
  const lowerHalf = `${id}-lower`;
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
      className="on-sky block w-full rounded-md"
    >
      <defs>
        <clipPath id={leftHalf}>
          <rect x="-4" y="-4" width="54" height="108" />
        </clipPath>
        <clipPath id={rightHalf}>
          <rect x="50" y="-4" width="54" height="108" />
        </clipPath>
        <clipPath id={lowerHalf}>
          <rect x="-4" y="50" width="108" height="54" />
        </clipPath>
      </defs>
      <rect width={width} height={height} fill="var(--sky)" />
      <path
        d={`M0 ${ground - 4} Q60 ${ground - 12} 120 ${ground - 5} T250 ${ground - 6} T${width} ${ground - 5} V${height} H0 Z`}
        fill="var(--land)"
      />
      <path d={`M0 ${ground} H${width} V${height} H0 Z`} fill="var(--land-near)" />
      {counted(fistsUp).map(({ half }, index) => (
        <Fist
          key={`up-${index}`}
          x={column - size / 2}
          y={ground - (index + 1) * size}
          size={size}
          half={half}
          clipId={lowerHalf}
        />
      ))}
      {counted(Math.abs(fistsRight)).map(({ half }, index) => (
        <Fist
          key={`side-${index}`}
          x={fistsRight > 0 ? post + index * size : post - (index + 1) * size}
          y={ground}
          size={size}
          half={half}
          clipId={fistsRight > 0 ? leftHalf : rightHalf}
        />
      ))}
      <g transform={`translate(${post} ${ground - 2})`}>
        <rect x="-1.6" y="-4" width="3.2" height="30" fill="var(--sky-line)" />
        <path d="M-17 -26 H17 V-9 L3 -7 L0 -2 L-3 -7 L-17 -9 Z" fill="var(--on-sky)" />
        <text y="-12.5" textAnchor="middle" fontSize="13" fontWeight="700" fill="var(--land-near)">
          {signpost.sign}
        </text>
      </g>
      <g transform={`translate(${column} ${top})`}>
        <circle r="9" fill="none" stroke="var(--on-sky)" strokeWidth="1.2" />
        <circle r="3.4" fill="var(--on-sky)" />
      </g>
    </svg>
  );
}
