import { useId } from 'react';
import { angleInWords } from '@/components/sky/angle-words';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import type { CentringStep } from './centring-path';

const radius = 100;
/** Where the star was found, a picture reaches no farther than the finder's window. */
const farEnoughArcmin = 240;
/** Where it was not, somewhat beyond the place of the confirm: how one came there is part of it. */
const beyondTheConfirm = 1.25;
/** A smaller ring has no room for a cross. */
const leastRingForACross = 9;

/** A light that was taken for the star: where it stood beside the star that was meant, on the sky. */
export type TakenForIt = { name: string; beside: FieldOffset };

type CentringPictureProps = {
  /** What the picture shows, for who cannot see it. */
  title: string;
  starName: string;
  steps: readonly CentringStep[];
  /** The step that has been reached. */
  shown: number;
  fieldRadiusArcmin: number;
  taken: TakenForIt | null;
};

/**
 * Star in the middle, on the sky as the eye sees it; the way there thin, what has been gone of it
 * thick. Star, place of the confirm and the eyepiece's field lie in it to one scale, however far off.
 */
export function CentringPicture({
  title,
  starName,
  steps,
  shown,
  fieldRadiusArcmin,
  taken,
}: CentringPictureProps) {
  const clipId = useId();
  const atConfirm = steps.at(-1);
  const at = steps[shown];
  if (atConfirm === undefined || at === undefined) return null;
  const reach = reachArcmin(steps, atConfirm.awayArcmin, fieldRadiusArcmin);
  const scale = radius / reach;
  const places = steps.map(({ tubeBesideStar }) => onPicture(tubeBesideStar, scale));
  const tube = onPicture(at.tubeBesideStar, scale);
  const end = onPicture(atConfirm.tubeBesideStar, scale);
  const field = fieldRadiusArcmin * scale;
  const missed = atConfirm.awayArcmin > fieldRadiusArcmin;
  return (
    <figure>
      <svg viewBox="-112 -112 224 224" role="img" aria-label={title} className="block w-full">
        <clipPath id={clipId}>
          <circle r={radius} />
        </clipPath>
        <circle r={radius} fill="var(--panel)" stroke="var(--strong)" strokeWidth="1.5" />
        <g clipPath={`url(#${clipId})`} fill="none" strokeLinejoin="round">
          <path d={lineThrough(places)} stroke="var(--strong)" strokeWidth="1" />
          <path
            d={lineThrough(places.slice(0, shown + 1))}
            stroke="var(--accent)"
            strokeWidth="2.4"
          />
          {missed ? (
            <path
              d={`M0 0L${text(end)}`}
              stroke="var(--ink)"
              strokeWidth="1.4"
              strokeDasharray="1.5 4"
              strokeLinecap="round"
            />
          ) : null}
          <g transform={`translate(${text(tube)})`} stroke="var(--ink)">
            <circle r={field.toFixed(1)} strokeWidth="1.8" />
            {field < leastRingForACross ? null : <path d="M-5 0H5M0 -5V5" strokeWidth="1.5" />}
          </g>
        </g>
        {taken === null ? null : (
          <TakenMark at={onPicture(taken.beside, scale)} name={missed ? taken.name : null} />
        )}
        {/* Away from where the tube came to stand, so that nothing crosses the name. */}
        <StarMark name={starName} below={end.y <= 0} />
        {missed ? <Distance end={end} arcmin={atConfirm.awayArcmin} /> : null}
      </svg>
      <figcaption className="text-sm text-soft">
        In the middle {starName}; the ring is the eyepiece’s field, to the same scale
        {field < leastRingForACross ? '' : ', the cross its middle'}.
        {missed ? ' Dotted: how far it was from there to the star.' : ''} The picture reaches{' '}
        {angleInWords(reach)} from the star; up is up.
      </figcaption>
    </figure>
  );
}

type Point = { x: number; y: number };

const onPicture = ({ rightArcmin, upArcmin }: FieldOffset, scale: number): Point => ({
  x: rightArcmin * scale,
  y: -upArcmin * scale,
});

const text = ({ x, y }: Point): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

const lineThrough = (places: readonly Point[]): string =>
  places.map((place, index) => `${index === 0 ? 'M' : 'L'}${text(place)}`).join('');

/** As much as the path needs, within limits: its beginning may lie outside, its end never does. */
function reachArcmin(
  steps: readonly CentringStep[],
  atConfirmArcmin: number,
  fieldRadiusArcmin: number,
): number {
  const farthest = Math.max(...steps.map(({ awayArcmin }) => awayArcmin));
  const least = Math.max(
    fieldRadiusArcmin * 1.2,
    atConfirmArcmin > fieldRadiusArcmin ? (atConfirmArcmin + fieldRadiusArcmin) * 1.08 : 0,
  );
  const most = Math.max(farEnoughArcmin, least * beyondTheConfirm);
  return Math.min(most, Math.max(least, farthest * 1.1));
}

function StarMark({ name, below }: { name: string; below: boolean }) {
  return (
    <>
      <path
        d="M0-8 1.8-1.8 8 0 1.8 1.8 0 8-1.8 1.8-8 0-1.8-1.8Z"
        fill="var(--ink)"
        stroke="var(--panel)"
        strokeWidth="0.8"
      />
      <Label x={0} y={below ? 20 : -12} anchor="middle">
        {name}
      </Label>
    </>
  );
}

/** Beside the dotted line, on the other side than the star's name. */
function Distance({ end, arcmin }: { end: Point; arcmin: number }) {
  const isLevel = Math.abs(end.x) > Math.abs(end.y);
  return (
    <Label
      x={end.x / 2 + (isLevel ? 0 : 7)}
      y={end.y / 2 + (isLevel ? (end.y <= 0 ? -7 : 15) : 4)}
      anchor={isLevel ? 'middle' : 'start'}
    >
      {angleInWords(arcmin)}
    </Label>
  );
}

/** A square, as in the picture of the eyepiece; named where the name has room. */
function TakenMark({ at, name }: { at: Point; name: string | null }) {
  // Outward where the name has room before the rim, else inward.
  const room = radius - (name?.length ?? 0) * 7;
  const left = at.x < 0 === Math.abs(at.x) < room;
  return (
    <>
      <rect x={at.x - 2.5} y={at.y - 2.5} width="5" height="5" fill="var(--ink)" />
      {name === null ? null : (
        <Label
          x={at.x + (left ? -8 : 8)}
          y={at.y + (at.y > 0 ? 18 : -12)}
          anchor={left ? 'end' : 'start'}
        >
          {name}
        </Label>
      )}
    </>
  );
}

function Label({
  x,
  y,
  anchor,
  children,
}: Point & { anchor: 'start' | 'middle' | 'end'; children: string }) {
  return (
    <text
      x={x.toFixed(1)}
      y={y.toFixed(1)}
      textAnchor={anchor}
      fontSize="12"
      fontWeight="600"
      fill="var(--ink)"
      stroke="var(--panel)"
      strokeWidth="3.5"
      paintOrder="stroke"
    >
      {children}
    </text>
  );
}
