'use client';

import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import { PlanView } from '@/components/telescope/plan-view';
import { radiansToDegrees } from '@/lib/units/angle';
import type { ClockViewProps } from './clock-view';
import { toBearing } from './compass-controls';

const ticks = Array.from({ length: 36 }, (_, index) => index * 10);
const rim = 150;
const handleAt = -193;

/** Clockwise from the top of the drawing, degrees; null where there is no drawing to ask. */
function bearingOf(event: PointerEvent<SVGGElement>): number | null {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
  if (matrix === null || matrix === undefined) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return radiansToDegrees(Math.atan2(x, -y));
}

/**
 * Telescope and compass from above, the needle straight up: the tube is turned by its handle, with the
 * arrow keys by a degree, with Shift by ten.
 */
export function CompassBench({ variant, draft, change }: ClockViewProps) {
  const held = useRef<number | null>(null);
  const bearingDeg = draft.compassDeg ?? 0;
  const set = (deg: number, said: boolean): void => {
    const compassDeg = toBearing(deg);
    change(
      { ...draft, compassDeg },
      said ? `The tube looks along ${String(compassDeg)}° on the compass.` : '',
      { merge: true },
    );
  };
  const onKeyDown = (event: KeyboardEvent<SVGGElement>): void => {
    const step =
      event.key === 'ArrowRight' || event.key === 'ArrowUp'
        ? 1
        : event.key === 'ArrowLeft' || event.key === 'ArrowDown'
          ? -1
          : null;
    if (step === null) return;
    event.preventDefault();
    set(bearingDeg + step * (event.shiftKey ? 10 : 1), true);
  };
  return (
    <svg
      viewBox="-226 -226 452 452"
      role="group"
      aria-label="Telescope and compass from above"
      className="on-sky block size-full"
    >
      <circle r={rim} fill="none" stroke="var(--sky-line)" strokeWidth="2" />
      {ticks.map((tick) => (
        <g key={tick} transform={`rotate(${String(tick)})`}>
          <path
            d={`M0 ${String(-rim)}V${String(tick % 30 === 0 ? -rim + 14 : -rim + 8)}`}
            stroke="var(--on-sky-soft)"
            strokeWidth="1.6"
          />
          {tick % 30 === 0 ? (
            <text
              y={-rim - 6}
              textAnchor="middle"
              fontSize="13"
              fill="var(--on-sky)"
              className="font-figures"
            >
              {tick}
            </text>
          ) : null}
        </g>
      ))}
      <g opacity="0.95">
        <PlanView kind={variant.tubeType} bearingDeg={bearingDeg} altitudeDeg={0} />
      </g>
      {/* The needle lies over it all: its dark half points to magnetic north. */}
      <path d="M-7 0L0-118L7 0Z" fill="var(--sky-lamp)" stroke="var(--sky)" strokeWidth="1" />
      <path d="M-7 0L0 118L7 0Z" fill="none" stroke="var(--sky-lamp)" strokeWidth="1.6" />
      <text y="-122" textAnchor="middle" fontSize="13" fill="var(--sky-lamp)" fontWeight="700">
        needle
      </text>
      <g
        role="slider"
        tabIndex={0}
        aria-label="Start direction of the tube on the compass"
        aria-valuenow={bearingDeg}
        aria-valuemin={0}
        aria-valuemax={359.9}
        aria-valuetext={`${String(bearingDeg)}° on the compass`}
        transform={`rotate(${bearingDeg.toFixed(1)})`}
        className="cursor-grab touch-none outline-offset-2 active:cursor-grabbing"
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          held.current = event.pointerId;
        }}
        onPointerMove={(event) => {
          if (held.current !== event.pointerId) return;
          const at = bearingOf(event);
          if (at !== null) set(Math.round(at), true);
        }}
        onPointerUp={() => {
          held.current = null;
        }}
        onPointerCancel={() => {
          held.current = null;
        }}
      >
        <circle cy={handleAt} r="26" fill="transparent" />
        <circle cy={handleAt} r="15" fill="var(--sky-lamp)" stroke="var(--sky)" strokeWidth="2" />
        <path
          d={`M-5 ${String(handleAt)}h10M-2 ${String(handleAt - 4)}l-5 4 5 4M2 ${String(handleAt - 4)}l5 4-5 4`}
          fill="none"
          stroke="var(--land-near)"
          strokeWidth="1.8"
        />
      </g>
    </svg>
  );
}
