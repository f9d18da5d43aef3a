'use client';

import { useEffect, useId, useState } from 'react';
import { Button } from '@/components/ui/button';
import { angleInWords } from '@/components/lab/run/run-words';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import type { CentringStep } from './centring-path';
import { beforeConfirmText } from './run-result-words';

const radius = 100;
/** A picture reaches from this far to that far round the star: at least the field, at most the finder's window. */
const widestArcmin = 240;
const frameMs = 60;
/** A replay takes about so many frames, however long the path is. */
const framesOfReplay = 80;

type CentringReplayProps = {
  starName: string;
  steps: readonly CentringStep[];
  fieldRadiusArcmin: number;
};

/**
 * Where the tube pointed beside the star, step by step. It opens with the whole path drawn; who asked
 * for less motion is offered no replay that runs by itself.
 */
export function CentringReplay({ starName, steps, fieldRadiusArcmin }: CentringReplayProps) {
  const last = steps.length - 1;
  const [shown, setShown] = useState(last);
  const [playing, setPlaying] = useState(false);
  const id = useId();
  useEffect(() => {
    if (!playing) return;
    const stride = Math.max(1, Math.round(last / framesOfReplay));
    const timer = window.setInterval(() => {
      setShown((before) => Math.min(last, before + stride));
    }, frameMs);
    return () => {
      window.clearInterval(timer);
    };
  }, [playing, last]);
  const running = playing && shown < last;
  const at = steps[shown];
  if (at === undefined) return null;
  const said = `${beforeConfirmText(at.secondsBefore)}: ${angleInWords(at.awayArcmin)} from ${starName}`;
  const goTo = (step: number): void => {
    setPlaying(false);
    setShown(Math.min(last, Math.max(0, step)));
  };
  return (
    <div>
      <PathPicture
        title={`Where the tube pointed beside ${starName}. ${said}.`}
        steps={steps}
        shown={shown}
        fieldRadiusArcmin={fieldRadiusArcmin}
      />
      <div className="no-print mt-2 space-y-2">
        <label htmlFor={id} className="block text-sm font-semibold">
          Follow the path to {starName}
        </label>
        <input
          id={id}
          type="range"
          min={0}
          max={last}
          value={shown}
          aria-valuetext={said}
          onChange={(event) => {
            goTo(Number(event.target.value));
          }}
          className="h-(--target) w-full accent-(--lamp-edge)"
        />
        <div className="flex flex-wrap gap-2">
          <Button
            onClick={() => {
              goTo(shown - 1);
            }}
            disabled={shown === 0}
          >
            One back
          </Button>
          <Button
            onClick={() => {
              goTo(shown + 1);
            }}
            disabled={shown === last}
          >
            One on
          </Button>
          <Button
            className="motion-reduce:hidden"
            onClick={() => {
              setShown(running ? shown : 0);
              setPlaying(!running);
            }}
          >
            {running ? 'Stop' : 'Play'}
          </Button>
        </div>
      </div>
      <p className="mt-1 text-sm text-soft">{said}.</p>
    </div>
  );
}

/** Star in the middle, on the sky as the eye sees it; the way there thin, what has been gone of it thick. */
function PathPicture({
  title,
  steps,
  shown,
  fieldRadiusArcmin,
}: {
  title: string;
  steps: readonly CentringStep[];
  shown: number;
  fieldRadiusArcmin: number;
}) {
  const clipId = useId();
  const places = steps.map(({ tubeBesideStar }) => tubeBesideStar);
  const reach = reachArcmin(places, fieldRadiusArcmin);
  const scale = radius / reach;
  const at = places[shown];
  const field = fieldRadiusArcmin * scale;
  return (
    <figure>
      <svg viewBox="-112 -112 224 224" role="img" aria-label={title} className="block w-full">
        <clipPath id={clipId}>
          <circle r={radius} />
        </clipPath>
        <circle r={radius} fill="var(--panel)" stroke="var(--strong)" strokeWidth="1.5" />
        <g clipPath={`url(#${clipId})`} fill="none" strokeLinejoin="round">
          <path d={pathData(places, scale)} stroke="var(--strong)" strokeWidth="1" />
          <path
            d={pathData(places.slice(0, shown + 1), scale)}
            stroke="var(--accent)"
            strokeWidth="2.4"
          />
          {at === null || at === undefined ? null : (
            <g
              transform={`translate(${(at.rightArcmin * scale).toFixed(1)} ${(-at.upArcmin * scale).toFixed(1)})`}
            >
              <circle r={field.toFixed(1)} stroke="var(--ink)" strokeWidth="1.8" />
              <path d="M-5 0 H5 M0 -5 V5" stroke="var(--ink)" strokeWidth="1.5" />
            </g>
          )}
        </g>
        <circle r="4" fill="var(--ink)" />
      </svg>
      <figcaption className="text-sm text-soft">
        In the middle the star; the ring is the eyepiece’s field, the cross its middle. The picture
        reaches {angleInWords(reach)} from the star; up is up.
      </figcaption>
    </figure>
  );
}

/** As much as the path needs, within limits: its beginning may lie outside. */
function reachArcmin(places: readonly (FieldOffset | null)[], fieldRadiusArcmin: number): number {
  const farthest = Math.max(
    0,
    ...places.map((place) =>
      place === null ? widestArcmin : Math.hypot(place.rightArcmin, place.upArcmin),
    ),
  );
  return Math.min(
    Math.max(widestArcmin, fieldRadiusArcmin * 1.2),
    Math.max(farthest * 1.1, fieldRadiusArcmin * 1.2),
  );
}

function pathData(places: readonly (FieldOffset | null)[], scale: number): string {
  let data = '';
  let pen = 'M';
  for (const place of places) {
    if (place === null) {
      pen = 'M';
      continue;
    }
    data += `${pen}${(place.rightArcmin * scale).toFixed(1)} ${(-place.upArcmin * scale).toFixed(1)} `;
    pen = 'L';
  }
  return data;
}
