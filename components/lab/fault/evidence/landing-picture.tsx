import { useId } from 'react';
import type { Landing } from '@/lib/faults/evidence';
import {
  pictureHeight as height,
  pictureMiddle as middle,
  pictureWidth as width,
  scaleFor,
} from './landing-scale';
import { Arrow, Otherwise, type PicturePoint } from './landing-arrows';
import type { PictureScale } from './landing-scale';

/**
 * The circle that the finder's view shows, degrees: about that of a small finder telescope (common
 * practice, no source). It only says where to look next.
 */
const finderRadiusDeg = 3;

type LandingPictureProps = {
  landing: Landing;
  fieldRadiusArcmin: number;
  /** Where the star stands, for the ground in the picture. */
  altitudeDeg: number | null;
  /** Where the tube would have landed had something else been the matter: a broken arrow leads there. */
  otherwise?: Landing | null;
};

/**
 * The sky round a target: the star in the middle, an arrow to where the tube landed, dotted how far
 * that is along the horizon and up, and the circles that eyepiece and finder show there, to scale. The text beside it says the same, so it is hidden
 * from a reader.
 */
export function LandingPicture({
  landing,
  fieldRadiusArcmin,
  altitudeDeg,
  otherwise = null,
}: LandingPictureProps) {
  const id = useId();
  const scale = scaleFor(otherwise === null ? [landing] : [landing, otherwise], fieldRadiusArcmin);
  const { pxPerDeg } = scale;
  const placeOf = ({ rightDeg, upDeg }: Landing): PicturePoint => ({
    x: middle.x + rightDeg * pxPerDeg,
    y: middle.y - upDeg * pxPerDeg,
  });
  const tube = placeOf(landing);
  const groundY = altitudeDeg === null ? height : middle.y + altitudeDeg * pxPerDeg;
  const field = Math.max(3, (fieldRadiusArcmin / 60) * pxPerDeg);
  const finder = finderRadiusDeg * pxPerDeg;
  return (
    <svg
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      aria-hidden="true"
      className="on-sky block w-full"
    >
      <defs>
        <linearGradient id={`${id}-sky`} x1="0" y1="0" x2="0" y2="1">
          <stop offset="0" stopColor="var(--sky)" />
          <stop offset="1" stopColor="var(--sky-low)" />
        </linearGradient>
        <clipPath id={`${id}-frame`}>
          <rect width={width} height={height} />
        </clipPath>
      </defs>
      <g clipPath={`url(#${id}-frame)`}>
        <rect width={width} height={height} fill={`url(#${id}-sky)`} />
        {groundY < height ? (
          <rect y={groundY} width={width} height={height - groundY} fill="var(--land)" />
        ) : null}
        <Graduations scale={scale} />
        {finder > 2 * field && finder < width ? (
          <circle
            cx={tube.x}
            cy={tube.y}
            r={finder}
            fill="none"
            stroke="var(--sky-line)"
            strokeWidth="1.4"
            strokeDasharray="5 4"
          />
        ) : null}
        <circle
          cx={tube.x}
          cy={tube.y}
          r={field}
          fill="var(--sky-lamp)"
          fillOpacity="0.14"
          stroke="var(--sky-lamp)"
          strokeWidth="1.8"
        />
        <path
          d={`M${String(middle.x)} ${String(middle.y)}H${tube.x.toFixed(1)}V${tube.y.toFixed(1)}`}
          fill="none"
          stroke="var(--sky-lamp)"
          strokeWidth="1.4"
          strokeDasharray="1.5 4"
          strokeLinecap="round"
        />
        <Arrow to={tube} stopBefore={field < 5 ? field + 1 : 0} />
        {otherwise === null ? null : <Otherwise at={placeOf(otherwise)} field={field} />}
        <path
          d="M0-8 1.8-1.8 8 0 1.8 1.8 0 8-1.8 1.8-8 0-1.8-1.8Z"
          transform={`translate(${String(middle.x)} ${String(middle.y)})`}
          fill="var(--on-sky)"
          stroke="var(--sky)"
          strokeWidth="0.8"
        />
        <ScaleBar scale={scale} />
      </g>
    </svg>
  );
}

/** Level and upright through the star, with a mark at every step: right and up are read off them. */
function Graduations({ scale }: { scale: PictureScale }) {
  const step = scale.stepDeg * scale.pxPerDeg;
  const along = Math.ceil(middle.x / step);
  const steps = Array.from({ length: 2 * along + 1 }, (_, index) => (index - along) * step);
  const marks = steps
    .filter((offset) => offset !== 0)
    .map(
      (offset) =>
        `M${(middle.x + offset).toFixed(1)} ${String(middle.y - 3)}v6` +
        `M${String(middle.x - 3)} ${(middle.y + offset).toFixed(1)}h6`,
    );
  return (
    <path
      d={`M0 ${String(middle.y)}H${String(width)}M${String(middle.x)} 0V${String(height)}${marks.join('')}`}
      fill="none"
      stroke="var(--sky-line)"
      strokeWidth="1"
      strokeOpacity="0.65"
    />
  );
}

function ScaleBar({ scale }: { scale: PictureScale }) {
  const length = scale.stepDeg * scale.pxPerDeg;
  return (
    <g transform={`translate(10 ${String(height - 10)})`}>
      <rect
        x="-5"
        y="-17"
        width={length + 16 + scale.stepText.length * 6}
        height="24"
        fill="var(--sky)"
        fillOpacity="0.8"
        rx="2"
      />
      <path
        d={`M0 -7v7h${length.toFixed(1)}v-7`}
        fill="none"
        stroke="var(--on-sky)"
        strokeWidth="1.4"
      />
      <text x={length + 6} y="0" fontSize="12" fill="var(--on-sky)">
        {scale.stepText}
      </text>
    </g>
  );
}
