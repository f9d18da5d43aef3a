'use client';

import type { KeyboardEvent, PointerEvent } from 'react';
import { useRef } from 'react';
import { mostTurns } from '@/lib/finder/setting';
import { wrap180 } from '@/lib/units/angle';
import { finderHand, type FinderProps } from './finder-hand';
import { finderInWords, screwNames, turnsInWords } from './finder-words';

/** One press of an arrow key, and of a page key, in turns. */
const keyStep = 0.05;
const pageStep = 1;

const leastTurns = -mostTurns;

const hundredths = (turns: number): number =>
  Math.min(mostTurns, Math.max(-mostTurns, Math.round(turns * 100) / 100));

/** One of the finder's screws, turned by dragging round it or by keys. */
export function ScrewKnob({ screw, ...props }: FinderProps & { screw: 0 | 1 }) {
  const { state, act } = finderHand(props);
  const turns = state.turns[screw];
  const grip = useRef<{ angleDeg: number; turns: number } | null>(null);

  const turnTo = (to: number): void => {
    if (state.locked) {
      props.change(props.draft, 'The screws are locked. Loosen them first.');
      return;
    }
    act(
      { do: 'turn', screw, toTurns: hundredths(to) },
      (after) =>
        `${screwNames[screw]}: ${turnsInWords(after.turns[screw])}. ${finderInWords(props.variant, after)}`,
      { merge: true },
    );
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const held = grip.current;
    if (held === null) return;
    const angleDeg = angleAt(event);
    const next = held.turns + wrap180(angleDeg - held.angleDeg) / 360;
    grip.current = { angleDeg, turns: next };
    turnTo(next);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const by = turnOfKey(event);
    if (by === 0) return;
    event.preventDefault();
    turnTo(turns + by);
  };
  const letGo = (): void => {
    grip.current = null;
  };

  return (
    <div className="w-24 text-center text-xs">
      <svg
        viewBox="-36 -36 72 72"
        role="slider"
        tabIndex={0}
        aria-label={screwNames[screw]}
        aria-valuemin={leastTurns}
        aria-valuemax={mostTurns}
        aria-valuenow={turns}
        aria-valuetext={`${turnsInWords(turns)}${state.locked ? ', locked' : ''}`}
        aria-disabled={state.locked ? true : undefined}
        className="mx-auto block size-18 cursor-grab touch-none rounded-full"
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          grip.current = { angleDeg: angleAt(event), turns };
        }}
        onPointerMove={onPointerMove}
        onPointerUp={letGo}
        onPointerCancel={letGo}
      >
        <circle r="33" fill="var(--land)" stroke="var(--sky-line)" strokeWidth="2" />
        <g transform={`rotate(${(turns * 360).toFixed(1)})`}>
          {Array.from({ length: 24 }, (_, i) => (
            <path
              key={i}
              d="M0 -33 V-28"
              transform={`rotate(${String(i * 15)})`}
              stroke="var(--sky-line)"
              strokeWidth="1.6"
            />
          ))}
          <path d="M-20 0 H20" stroke="var(--on-sky)" strokeWidth="5" strokeLinecap="round" />
          <circle cy="-23" r="3" fill="var(--sky-lamp)" />
        </g>
        {state.locked ? (
          <g fill="none" stroke="var(--on-sky)" strokeWidth="2">
            <rect x="-8" y="-3" width="16" height="13" rx="2" fill="var(--land-near)" />
            <path d="M-5 -3 V-8 A5 5 0 0 1 5 -8 V-3" />
          </g>
        ) : null}
      </svg>
      <p aria-hidden="true" className="mt-1 leading-tight">
        <span className="block font-semibold">{screwNames[screw]}</span>
        <span className="text-on-sky-soft">{state.locked ? 'locked' : turnsInWords(turns)}</span>
      </p>
    </div>
  );
}

/** Clockwise from the top, seen on the screen. */
function angleAt(event: PointerEvent<SVGSVGElement>): number {
  const box = event.currentTarget.getBoundingClientRect();
  const x = event.clientX - (box.left + box.width / 2);
  const y = event.clientY - (box.top + box.height / 2);
  return (Math.atan2(x, -y) * 180) / Math.PI;
}

function turnOfKey({ key }: KeyboardEvent): number {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return keyStep;
    case 'ArrowLeft':
    case 'ArrowDown':
      return -keyStep;
    case 'PageUp':
      return pageStep;
    case 'PageDown':
      return -pageStep;
    default:
      return 0;
  }
}
