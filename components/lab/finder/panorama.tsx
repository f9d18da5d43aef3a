'use client';

import type { KeyboardEvent, PointerEvent } from 'react';
import { useEffect, useRef } from 'react';
import type { SettingState } from '@/lib/finder/setting';
import { tubeMoved } from '@/lib/finder/sights';
import type { AzAlt } from '@/lib/finder/way-past-sun';
import { finderHand, viewsInWords, type FinderProps } from './finder-hand';
import { chosenAim } from './finder-work';
import { fromSunInWords, placeInWords } from './finder-words';
import {
  fromScene,
  sceneBottom,
  sceneHalfWidth,
  sceneTop,
  toScene,
  type ScenePoint,
} from './scene-places';
import { ScenePicture } from './scene-picture';
import { TubeMark } from './tube-mark';

/** A press of an arrow key turns the tube by so much; with Shift by ten times as much. Arcminutes. */
const keyStepArcmin = 60;

/** The scene round the telescope, with the tube's mark to be dragged or turned by keys. */
export function Panorama(props: FinderProps) {
  const { variant } = props;
  const { state, act } = finderHand(props);
  const { middleAzimuthDeg } = variant;
  const frame = useRef<HTMLDivElement>(null);
  const surface = useRef<SVGSVGElement>(null);
  const dragged = useRef(false);
  const chosen = chosenAim(variant, state);
  const tube = toScene(state.tube, middleAzimuthDeg);
  const x = Math.min(sceneHalfWidth, Math.max(-sceneHalfWidth, tube.x));

  // On a phone the scene is wider than the window: what was turned out of it is brought back.
  useEffect(() => {
    const box = frame.current;
    if (box === null || dragged.current) return;
    const atPx = ((x + sceneHalfWidth) / (2 * sceneHalfWidth)) * box.scrollWidth;
    const seen = atPx > box.scrollLeft + 24 && atPx < box.scrollLeft + box.clientWidth - 24;
    if (!seen) box.scrollLeft = atPx - box.clientWidth / 2;
  }, [x]);

  const turnTo = (to: AzAlt, merge: boolean): void => {
    act(
      { do: 'move', azimuthDeg: rounded(to.azimuthDeg), altitudeDeg: rounded(to.altitudeDeg) },
      (after) => `The tube points ${tubeInWords(variant, after)}. ${viewsInWords(variant, after)}`,
      { merge },
    );
  };
  const follow = (event: PointerEvent<SVGGElement>): void => {
    const place = placeIn(surface.current, event);
    if (place !== null) turnTo(fromScene(place, middleAzimuthDeg), true);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = stepOfKey(event);
    if (step === null) return;
    event.preventDefault();
    turnTo(tubeMoved(state.tube, step), true);
  };

  return (
    <div ref={frame} className="overflow-x-auto overflow-y-hidden">
      <svg
        ref={surface}
        viewBox={`${String(-sceneHalfWidth)} ${String(sceneTop)} ${String(2 * sceneHalfWidth)} ${String(sceneBottom - sceneTop)}`}
        className="block w-full min-w-[42rem] lg:min-w-0"
      >
        <ScenePicture
          variant={variant}
          dusk={state.dusk}
          stand={state.stand}
          chosenId={state.targetId}
        >
          {chosen === null ? null : (
            <WayThere from={{ x, y: tube.y }} to={toScene(chosen, middleAzimuthDeg)} />
          )}
          <g
            role="slider"
            tabIndex={0}
            aria-label="Tube: left and right along the horizon, up and down"
            aria-valuemin={0}
            aria-valuemax={360}
            aria-valuenow={Math.round(state.tube.azimuthDeg)}
            aria-valuetext={`${tubeInWords(variant, state)}; caps ${state.capsOn ? 'on' : 'off'}`}
            transform={`translate(${x.toFixed(2)} ${tube.y.toFixed(2)})`}
            className="cursor-grab touch-none"
            onKeyDown={onKeyDown}
            onPointerDown={(event) => {
              event.currentTarget.setPointerCapture(event.pointerId);
              dragged.current = true;
            }}
            onPointerMove={(event) => {
              if (dragged.current) follow(event);
            }}
            onPointerUp={() => {
              dragged.current = false;
            }}
            onPointerCancel={() => {
              dragged.current = false;
            }}
          >
            <circle r="8.5" fill="transparent" />
            <TubeMark capped={state.capsOn} />
          </g>
        </ScenePicture>
      </svg>
    </div>
  );
}

/** 0.36″ is finer than any hand, and keeps the record short. */
const rounded = (deg: number): number => (Math.round(deg * 10_000) / 10_000) % 360;

function tubeInWords(variant: FinderProps['variant'], state: SettingState): string {
  const fromSun = fromSunInWords(variant, state, state.tube);
  return `${placeInWords(state.tube)}${fromSun === '' ? '' : `, ${fromSun}`}`;
}

function stepOfKey({ key, shiftKey }: KeyboardEvent) {
  const size = keyStepArcmin * (shiftKey ? 10 : 1);
  switch (key) {
    case 'ArrowLeft':
      return { rightArcmin: -size, upArcmin: 0 };
    case 'ArrowRight':
      return { rightArcmin: size, upArcmin: 0 };
    case 'ArrowUp':
      return { rightArcmin: 0, upArcmin: size };
    case 'ArrowDown':
      return { rightArcmin: 0, upArcmin: -size };
    default:
      return null;
  }
}

function placeIn(
  svg: SVGSVGElement | null,
  { clientX, clientY }: { clientX: number; clientY: number },
): ScenePoint | null {
  const box = svg?.getBoundingClientRect();
  if (box === undefined || box.width === 0) return null;
  const perPixel = (2 * sceneHalfWidth) / box.width;
  return {
    x: (clientX - box.left) * perPixel - sceneHalfWidth,
    y: (clientY - box.top) * perPixel + sceneTop,
  };
}

function WayThere({ from, to }: { from: ScenePoint; to: ScenePoint }) {
  return (
    <path
      d={`M${from.x.toFixed(2)} ${from.y.toFixed(2)} L${to.x.toFixed(2)} ${to.y.toFixed(2)}`}
      stroke="var(--on-sky)"
      strokeWidth="0.5"
      strokeDasharray="0.6 1.4"
      pointerEvents="none"
    />
  );
}
