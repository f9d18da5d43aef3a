import { useId } from 'react';
import { signpostDirections } from '@/components/sky/directions';
import { fistDeg } from '@/components/sky/position-words';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { CardPair } from '@/lib/night/plan-night';
import { horizonAltitudeDeg, type SkylinePoint } from '@/lib/sky/horizon';
import { wrap180, wrap360 } from '@/lib/units/angle';
import { placeLabels } from './place-labels';

/** A unit is a degree: 36 fists round the horizon, eight and a half up. */
const turn = 360;
const top = 85;
const textSize = 8.5;

const everyFist = Array.from({ length: turn / fistDeg }, (_, index) => index * fistDeg);
const fistsUp = [1, 2, 3, 4, 5, 6, 7, 8];

/**
 * The way round the horizon with a grid of fists, the skyline, the bright stars and the pair: for paper, in
 * pure black. The pair stands in the middle, so what is left and right on the sheet is so outside.
 */
export function FistPanorama({
  title,
  stars,
  horizon,
  pair,
  spare,
}: {
  title: string;
  stars: readonly SkyPictureStar[];
  horizon: readonly SkylinePoint[];
  pair: CardPair['pair'];
  spare: CardPair['spare'];
}) {
  const id = useId();
  const [one, other] = pair.stars;
  const middle = one.azimuthDeg + wrap180(other.azimuthDeg - one.azimuthDeg) / 2;
  const left = Math.round((middle - turn / 2) / fistDeg) * fistDeg;
  const xOf = (azimuthDeg: number): number => wrap360(azimuthDeg - left);
  const at = ({ azimuthDeg, altitudeDeg }: { azimuthDeg: number; altitudeDeg: number }) => ({
    x: xOf(azimuthDeg),
    y: top - altitudeDeg,
  });
  const spareStars = spare?.stars ?? [];
  const labels = placeLabels(
    [...pair.stars, ...spareStars].map((star) => ({ ...at(star), text: star.name })),
    { size: textSize, width: turn, gap: 6.5 },
  );
  return (
    <svg
      viewBox={`-9 -2 ${String(turn + 11)} ${String(top + 15)}`}
      role="img"
      aria-label={title}
      className="block w-full min-w-[40rem] text-ink print:min-w-0"
      fill="currentColor"
    >
      <defs>
        <pattern
          id={`${id}-land`}
          width="3"
          height="3"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V3" stroke="currentColor" strokeWidth="1.1" />
        </pattern>
        <clipPath id={`${id}-frame`}>
          <rect width={turn} height={top} />
        </clipPath>
      </defs>
      <g stroke="currentColor" strokeWidth="0.35" strokeDasharray="0.7 1.9">
        {everyFist.map((x) => (
          <path key={x} d={`M${String(x)} 0V${String(top)}`} />
        ))}
        {fistsUp.map((fists) => (
          <path key={fists} d={`M0 ${String(top - fists * fistDeg)}H${String(turn)}`} />
        ))}
      </g>
      {stars
        .filter(({ altitudeDeg }) => altitudeDeg < top)
        .map((star) => (
          <circle
            key={`${String(star.azimuthDeg)} ${String(star.altitudeDeg)}`}
            cx={at(star).x.toFixed(1)}
            cy={at(star).y.toFixed(1)}
            r={Math.max(0.6, 2.3 - 0.55 * star.magnitude).toFixed(2)}
          />
        ))}
      <path
        d={skylinePath(horizon, left)}
        fill={`url(#${id}-land)`}
        stroke="currentColor"
        strokeWidth="0.8"
      />
      <g fill="none" stroke="currentColor" clipPath={`url(#${id}-frame)`}>
        {pair.stars.map((star) => (
          <rect
            key={star.hip}
            x={(at(star).x - 4.5).toFixed(1)}
            y={(at(star).y - 4.5).toFixed(1)}
            width="9"
            height="9"
            strokeWidth="1.7"
          />
        ))}
        {spareStars.map((star) => (
          <circle
            key={star.hip}
            cx={at(star).x.toFixed(1)}
            cy={at(star).y.toFixed(1)}
            r="4.6"
            strokeWidth="1.1"
          />
        ))}
      </g>
      <rect width={turn} height={top} fill="none" stroke="currentColor" strokeWidth="1" />
      <g
        fontSize={textSize}
        fontWeight="700"
        stroke="var(--panel)"
        strokeWidth="2.4"
        paintOrder="stroke"
      >
        {labels.map(({ text, labelX, labelY }) => (
          <text key={text} x={labelX.toFixed(1)} y={labelY.toFixed(1)}>
            {text}
          </text>
        ))}
      </g>
      <g fontSize="7" fontWeight="700" textAnchor="middle">
        {fistsUp
          .filter((fists) => fists % 2 === 0)
          .map((fists) => (
            <text key={fists} x="-5" y={top - fists * fistDeg + 2.4}>
              {fists}
            </text>
          ))}
        {signpostDirections.map(({ sign, azimuthDeg }) => (
          <text key={sign} x={xOf(azimuthDeg)} y={top + 9.5}>
            {sign}
          </text>
        ))}
      </g>
      <g stroke="currentColor" strokeWidth="1">
        {signpostDirections.map(({ sign, azimuthDeg }) => (
          <path key={sign} d={`M${String(xOf(azimuthDeg))} ${String(top)}v2.5`} />
        ))}
      </g>
    </svg>
  );
}

/** The skyline from the sheet's left to its right, closed along the bottom. */
function skylinePath(horizon: readonly SkylinePoint[], left: number): string {
  const xs = [
    ...Array.from({ length: turn / 2 + 1 }, (_, index) => index * 2),
    ...horizon.map(({ azimuthDeg }) => wrap360(azimuthDeg - left)),
  ].sort((a, b) => a - b);
  const line = xs
    .map(
      (x) => `${x.toFixed(1)} ${(top - horizonAltitudeDeg(horizon, wrap360(left + x))).toFixed(1)}`,
    )
    .join(' L');
  return `M0 ${String(top)} L${line} L${String(turn)} ${String(top)} Z`;
}
