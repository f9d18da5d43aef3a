import { useId } from 'react';
import type { CloudPatch, HorizonPoint } from '@/lib/pointing/scenario';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import type { Placed } from './all-sky';
import { greatCirclePath, onDisc, ringPath, skyCirclePath } from './all-sky';
import type { SkyPictureStar } from './sky-picture-stars';

type NamedPlace = Placed & { name: string };

export type SkyPicturePair = {
  /** 'chosen': solid line and rings. 'best': broken line and squares. Told apart without colour. */
  kind: 'chosen' | 'best';
  stars: readonly [NamedPlace, NamedPlace];
};

export type SkyPictureProps = {
  /** What the picture shows, for who cannot see it. */
  title: string;
  stars: readonly SkyPictureStar[];
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  /** Null or below the horizon: none is drawn. */
  moon: (Placed & { illuminatedFraction: number }) | null;
  pairs?: readonly SkyPicturePair[];
  /** Stars to be named without being part of a pair. */
  named?: readonly NamedPlace[];
  /** The band of altitudes in which a star may serve. */
  limits?: { lowestAltitudeDeg: number; highestAltitudeDeg: number };
  className?: string;
};

const radius = 200;
const everyTwoDegrees = Array.from({ length: 180 }, (_, index) => index * 2);
const rim = [
  { sign: 'N', azimuthDeg: 0 },
  { sign: 'E', azimuthDeg: 90 },
  { sign: 'S', azimuthDeg: 180 },
  { sign: 'W', azimuthDeg: 270 },
];

/**
 * The whole sky on paper: works on the server, in every theme, and in black and white. Zenith in the
 * middle, north up, east to the left as one sees it looking up.
 */
export function SkyPicture(props: SkyPictureProps) {
  const { title, stars, horizon, clouds, moon, pairs = [], named = [], limits } = props;
  const id = useId();
  const azimuths = [
    ...new Set([...everyTwoDegrees, ...horizon.map((point) => point.azimuthDeg)]),
  ].sort((a, b) => a - b);
  const skyline = ringPath((a) => horizonAltitudeDeg(horizon, a), azimuths, radius);
  const rimCircle = ringPath(() => 0, everyTwoDegrees, radius);
  return (
    <figure className={props.className}>
      <svg viewBox="-228 -228 456 456" role="img" aria-label={title} className="block w-full">
        <defs>
          <pattern
            id={`${id}-ground`}
            width="5"
            height="5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="5" height="5" fill="var(--sunken)" />
            <path d="M0 0 V5" stroke="var(--strong)" strokeWidth="1.6" />
          </pattern>
          <pattern id={`${id}-cloud`} width="7" height="7" patternUnits="userSpaceOnUse">
            <circle cx="3.5" cy="3.5" r="1.1" fill="var(--strong)" />
          </pattern>
        </defs>
        <circle r={radius} fill="var(--panel)" />
        {[30, 60].map((altitude) => (
          <circle
            key={altitude}
            r={(radius * (90 - altitude)) / 90}
            fill="none"
            stroke="var(--line)"
          />
        ))}
        {limits === undefined ? null : (
          <g fill="none" stroke="var(--soft)" strokeDasharray="2 4">
            <circle r={(radius * (90 - limits.lowestAltitudeDeg)) / 90} />
            <circle r={(radius * (90 - limits.highestAltitudeDeg)) / 90} />
          </g>
        )}
        {stars.map((star) => (
          <circle
            key={`${star.azimuthDeg} ${star.altitudeDeg}`}
            cx={onDisc(star, radius).x.toFixed(1)}
            cy={onDisc(star, radius).y.toFixed(1)}
            r={Math.max(0.7, 4 - 0.9 * star.magnitude).toFixed(1)}
            fill="var(--ink)"
          />
        ))}
        {clouds.map((cloud) => (
          <path
            key={`${cloud.azimuthDeg} ${cloud.altitudeDeg}`}
            d={skyCirclePath(cloud, cloud.radiusDeg, radius)}
            fill={`url(#${id}-cloud)`}
            stroke="var(--strong)"
            strokeDasharray="1 3"
          />
        ))}
        <path d={`${rimCircle} ${skyline}`} fillRule="evenodd" fill={`url(#${id}-ground)`} />
        <path d={skyline} fill="none" stroke="var(--strong)" strokeWidth="1.5" />
        {moon === null || moon.altitudeDeg <= 0 ? null : <MoonMark moon={moon} />}
        <circle r={radius} fill="none" stroke="var(--strong)" strokeWidth="2" />
        {pairs.map((pair) => (
          <PairMark key={pair.kind} pair={pair} />
        ))}
        {namesOnce([...pairs.flatMap((pair) => pair.stars), ...named]).map((star) => (
          <NameMark key={star.name} star={star} />
        ))}
        <g
          fontSize="17"
          fontWeight="600"
          fill="var(--ink)"
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
      <figcaption className="mt-1 text-sm text-soft">
        The whole sky, looking up: straight up is in the middle, north at the top, east on the left.
        {limits === undefined
          ? ''
          : ` Dotted rings: ${limits.lowestAltitudeDeg}° and ${limits.highestAltitudeDeg}° high.`}
        {clouds.length === 0 ? '' : ' Dots: cloud.'}
      </figcaption>
    </figure>
  );
}

const namesOnce = (stars: readonly NamedPlace[]): NamedPlace[] => [
  ...new Map(stars.map((star) => [star.name, star])).values(),
];

function MoonMark({ moon }: { moon: Placed & { illuminatedFraction: number } }) {
  const { x, y } = onDisc(moon, radius);
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <circle r="8" fill="var(--panel)" stroke="var(--ink)" strokeWidth="1.5" />
      <path d="M0 -8 A8 8 0 0 1 0 8 A4 8 0 0 0 0 -8" fill="var(--ink)" />
      <text y="21" textAnchor="middle" fontSize="13" fill="var(--ink)">
        Moon
      </text>
    </g>
  );
}

function PairMark({ pair }: { pair: SkyPicturePair }) {
  const best = pair.kind === 'best';
  const [one, other] = pair.stars;
  return (
    <g fill="none" stroke={best ? 'var(--ink)' : 'var(--accent)'} strokeWidth="2.6">
      <path
        d={greatCirclePath(one, other, radius)}
        strokeDasharray={best ? '3 6' : undefined}
        strokeLinecap="round"
      />
      {pair.stars.map((star) => {
        const { x, y } = onDisc(star, radius);
        return best ? (
          <rect
            key={star.name}
            x={(x - 10.5).toFixed(1)}
            y={(y - 10.5).toFixed(1)}
            width="21"
            height="21"
          />
        ) : (
          <circle key={star.name} cx={x.toFixed(1)} cy={y.toFixed(1)} r="8.5" />
        );
      })}
    </g>
  );
}

function NameMark({ star }: { star: NamedPlace }) {
  const { x, y } = onDisc(star, radius);
  const left = x > 110;
  return (
    <text
      x={(left ? x - 14 : x + 14).toFixed(1)}
      y={(y - 9).toFixed(1)}
      textAnchor={left ? 'end' : 'start'}
      fontSize="15"
      fontWeight="600"
      fill="var(--ink)"
      stroke="var(--panel)"
      strokeWidth="4"
      paintOrder="stroke"
    >
      {star.name}
    </text>
  );
}
