import { useId } from 'react';
import type { CloudPatch, HorizonPoint } from '@/lib/pointing/scenario';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import type { Placed } from './all-sky';
import { greatCirclePath, headingOnDisc, onDisc, ringPath, skyCirclePath } from './all-sky';
import { litPartOfMoon } from './moon-phase';
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
  /** Not drawn: the Moon's bright side faces it. */
  sun: Placed;
  pairs?: readonly SkyPicturePair[];
  /** Stars to be named without being part of a pair. */
  named?: readonly NamedPlace[];
  /** Ways over the sky, such as where a tube pointed one moment after another. */
  paths?: readonly (readonly Placed[])[];
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
  const {
    title,
    stars,
    horizon,
    clouds,
    moon,
    sun,
    pairs = [],
    named = [],
    paths = [],
    limits,
  } = props;
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
        {moon === null || moon.altitudeDeg <= 0 ? null : <MoonMark moon={moon} sun={sun} />}
        <circle r={radius} fill="none" stroke="var(--strong)" strokeWidth="2" />
        {paths.map((path, index) => (
          <PathMark key={index} path={path} />
        ))}
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

/** The Moon with its phase, its bright side towards the Sun, larger than it is. */
function MoonMark({ moon, sun }: { moon: Placed & { illuminatedFraction: number }; sun: Placed }) {
  const { x, y } = onDisc(moon, radius);
  const towardsSun = headingOnDisc(moon, sun, radius).toFixed(0);
  return (
    <g
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
      stroke="var(--ink)"
      strokeWidth="1.5"
    >
      <circle r="8" fill="var(--land-near)" />
      <path
        d={litPartOfMoon(moon.illuminatedFraction, 8)}
        transform={`rotate(${towardsSun})`}
        fill="var(--on-sky)"
        strokeWidth="0.5"
      />
      <text y="21" textAnchor="middle" fontSize="13" fill="var(--ink)" stroke="none">
        Moon
      </text>
    </g>
  );
}

/** A dot where it begins; its end is told by what it leads to. */
function PathMark({ path }: { path: readonly Placed[] }) {
  const points = path.map((at) => onDisc(at, radius));
  const [first] = points;
  if (first === undefined) return null;
  const data = points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join(' L');
  return (
    <g>
      <path
        d={`M${data}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.4"
        strokeLinejoin="round"
      />
      <circle cx={first.x.toFixed(1)} cy={first.y.toFixed(1)} r="3" fill="var(--ink)" />
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
