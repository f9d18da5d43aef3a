'use client';

import type { KeyboardEvent, PointerEvent, ReactNode } from 'react';
import { useRef } from 'react';
import { degreesToRadians, radiansToDegrees } from '@/lib/units/angle';
import { degText, mmText } from './balance-words';
import { mmPerUnit } from './tube-figure';
import type { BalanceViewProps, TubeHand } from './use-tube-hand';

type TubeHandleProps = {
  hand: TubeHand;
  variant: BalanceViewProps['variant'];
  children: ReactNode;
};

/** Where the pointer is in the drawing, whose origin is the altitude axis. */
function placeOf(event: PointerEvent<SVGGElement>): { x: number; y: number } | null {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
  if (matrix === null || matrix === undefined) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { x, y };
}

/**
 * The tube as a thing to take hold of: with the clamp open it slides along itself, with the clamp
 * locked it is raised and lowered about the axis. Arrow keys do the same, with Shift ten times as far.
 */
export function TubeHandle({ hand, variant, children }: TubeHandleProps) {
  const { state, act } = hand;
  const grabbed = useRef<{ pointer: number; from: number } | null>(null);
  const slides = state.clampOpen;
  const altitude = degreesToRadians(state.altitudeDeg);

  const set = (value: number, merge: boolean): void => {
    const whole = Math.round(value);
    act(
      slides
        ? { do: 'slide', toMm: whole }
        : { do: 'tip', toDeg: Math.max(0, Math.min(90, whole)) },
      { merge },
    );
  };
  /** Of the pointer: how far along the tube it is, as millimetres of clamp; or its angle about the axis. */
  const measure = (event: PointerEvent<SVGGElement>): number | null => {
    const place = placeOf(event);
    if (place === null) return null;
    return slides
      ? (place.x * Math.cos(altitude) - place.y * Math.sin(altitude)) * mmPerUnit
      : radiansToDegrees(Math.atan2(-place.y, place.x));
  };
  const value = slides ? state.clampMm : state.altitudeDeg;

  const onKeyDown = (event: KeyboardEvent<SVGGElement>): void => {
    const step =
      event.key === 'ArrowRight' || event.key === 'ArrowUp'
        ? 1
        : event.key === 'ArrowLeft' || event.key === 'ArrowDown'
          ? -1
          : null;
    if (step === null) return;
    event.preventDefault();
    set(value + step * (event.shiftKey ? 10 : 1), true);
  };

  return (
    <g
      role="slider"
      tabIndex={0}
      aria-label={slides ? 'Tube in the open clamp: slide it' : 'Tube: raise or lower it by hand'}
      aria-valuenow={Math.round(value)}
      aria-valuemin={slides ? variant.bar.leastMm : 0}
      aria-valuemax={slides ? variant.bar.mostMm : 90}
      aria-valuetext={
        slides
          ? `clamp at ${mmText(state.clampMm)} of the tape`
          : `altitude ${degText(state.altitudeDeg)}`
      }
      className="cursor-grab touch-none outline-offset-4 active:cursor-grabbing"
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        const at = measure(event);
        if (at === null) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        // At the stops below level and beyond upright the hand begins from the nearest it can set.
        const from = slides ? value : Math.max(0, Math.min(90, value));
        grabbed.current = { pointer: event.pointerId, from: at - from };
      }}
      onPointerMove={(event) => {
        const held = grabbed.current;
        if (held?.pointer !== event.pointerId) return;
        const at = measure(event);
        if (at === null) return;
        const moved = at - held.from;
        set(slides ? moved : moved > 180 ? moved - 360 : moved < -180 ? moved + 360 : moved, true);
      }}
      onPointerUp={() => {
        grabbed.current = null;
      }}
      onPointerCancel={() => {
        grabbed.current = null;
      }}
    >
      {children}
    </g>
  );
}
