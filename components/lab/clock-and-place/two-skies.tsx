import { greatCirclePath, onDisc, type Placed } from '@/components/sky/all-sky';
import type { Overlay } from './overlay-stars';

export type TwoSkiesProps = {
  overlay: Overlay;
  /** In a check only the mount's sky: whether it is the real one is for the learner to know. */
  shown: 'both' | 'believed' | 'real';
  /** What the picture shows, for who cannot see it. */
  title: string;
  className?: string;
};

const radius = 200;
const rim = [
  { sign: 'N', azimuthDeg: 0 },
  { sign: 'E', azimuthDeg: 90 },
  { sign: 'S', azimuthDeg: 180 },
  { sign: 'W', azimuthDeg: 270 },
];
const fistRings = [10, 20, 30, 40, 50, 60, 70, 80];

const at = (placed: Placed): string => {
  const { x, y } = onDisc(placed, radius);
  return `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
};

/**
 * The whole sky, looking up: full stars where they are, rings where the mount would point for them, and a
 * dashed way from the one to the other.
 */
export function TwoSkies({ overlay, shown, title, className }: TwoSkiesProps) {
  const both = shown === 'both';
  const real = shown !== 'believed';
  const believed = shown !== 'real';
  const { stars, pole } = overlay;
  const judged = stars.filter((star) => star.judged);
  return (
    <svg
      viewBox="-228 -228 456 456"
      role="img"
      aria-label={title}
      className={`on-sky block ${className ?? ''}`}
    >
      <circle r={radius} fill="var(--sky)" stroke="var(--sky-line)" strokeWidth="2" />
      {fistRings.map((altitude) => (
        <circle
          key={altitude}
          r={(radius * (90 - altitude)) / 90}
          fill="none"
          stroke="var(--sky-line)"
          strokeOpacity={altitude % 30 === 0 ? 0.6 : 0.25}
        />
      ))}
      {both
        ? judged
            .filter(({ missDeg }) => missDeg > 0.5)
            .map(({ name, real, tube }) => (
              <path
                key={name}
                d={greatCirclePath(real, tube, radius)}
                fill="none"
                stroke="var(--sky-lamp)"
                strokeWidth="1.6"
                strokeDasharray="2 5"
                strokeLinecap="round"
              />
            ))
        : null}
      {real ? stars.map((star) => <RealStar key={star.name} {...star} />) : null}
      {(believed ? stars : []).map(({ name, tube, magnitude }) =>
        tube.altitudeDeg < 0 ? null : (
          <circle
            key={name}
            transform={at(tube)}
            r={(size(magnitude) + 3.5).toFixed(1)}
            fill="none"
            stroke="var(--sky-lamp)"
            strokeWidth="1.8"
          />
        ),
      )}
      {!believed || pole.tube.altitudeDeg < 0 ? null : (
        <path
          transform={at(pole.tube)}
          d="M-8-8L8 8M-8 8L8-8"
          stroke="var(--sky-lamp)"
          strokeWidth="2"
        />
      )}
      {real ? (
        <path transform={at(pole.real)} d="M-8 0H8M0-8V8" stroke="var(--on-sky)" strokeWidth="2" />
      ) : null}
      {judged.map((star) => (
        <StarName key={star.name} name={star.name} place={real ? star.real : star.tube} />
      ))}
      <g
        fontSize="17"
        fontWeight="600"
        fill="var(--on-sky)"
        textAnchor="middle"
        dominantBaseline="central"
      >
        {rim.map(({ sign, azimuthDeg }) => {
          const { x, y } = onDisc({ azimuthDeg, altitudeDeg: 0 }, radius + 14);
          return (
            <text key={sign} x={x.toFixed(1)} y={y.toFixed(1)}>
              {sign}
            </text>
          );
        })}
      </g>
    </svg>
  );
}

const size = (magnitude: number): number => Math.max(1.4, 5 - 1.4 * magnitude);

function RealStar({ real, magnitude }: { real: Placed; magnitude: number }) {
  const scale = size(magnitude) / 4;
  return (
    <path
      d="M0-8 1.8-1.8 8 0 1.8 1.8 0 8-1.8 1.8-8 0-1.8-1.8Z"
      transform={`${at(real)} scale(${scale.toFixed(2)})`}
      fill="var(--on-sky)"
    />
  );
}

function StarName({ name, place }: { name: string; place: Placed }) {
  if (place.altitudeDeg < 0) return null;
  const { x, y } = onDisc(place, radius);
  const left = x > 90;
  return (
    <text
      x={(left ? x - 11 : x + 11).toFixed(1)}
      y={(y - 8).toFixed(1)}
      textAnchor={left ? 'end' : 'start'}
      fontSize="14"
      fill="var(--on-sky)"
      stroke="var(--sky)"
      strokeWidth="3.5"
      paintOrder="stroke"
    >
      {name}
    </text>
  );
}
