'use client';

import type { PointerEvent } from 'react';
import { useRef } from 'react';
import { rockerPlace, rockerStep, rockerSteps } from './rocker-speed';

/** Half the length of a strip, in the drawing's own units. */
const half = 100;
const halfWidth = 28;
const steps = Array.from({ length: rockerSteps }, (_, index) => index + 1);

const stripPath = `M${String(-half)} -15 L-82 ${String(-halfWidth)} H82 L${String(half)} -15 V15 L82 ${String(halfWidth)} H-82 L${String(-half)} 15 Z`;

type Rockers = Readonly<{ azimuth: number; altitude: number }>;

type RockerCrossProps = {
  rockers: Rockers;
  disabled: boolean;
  onChange: (rockers: Rockers) => void;
};

/** The half length of a strip on the screen, and the press relative to the middle. Up is positive. */
function pressOf(event: PointerEvent<SVGSVGElement>) {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    x: event.clientX - (box.left + box.width / 2),
    y: box.top + box.height / 2 - event.clientY,
    half: (box.width / 2) * (half / (half + 8)),
  };
}

/**
 * Two strips that cross: along the horizon, and up and down. The farther from the middle, the faster;
 * let go, they spring back. A press that begins where they cross moves both. The arrow keys and the
 * step buttons do the same without a pointer, so this is hidden from readers.
 */
export function RockerCross({ rockers, disabled, onChange }: RockerCrossProps) {
  const held = useRef<{ pointer: number; azimuth: boolean; altitude: boolean } | null>(null);

  const follow = (event: PointerEvent<SVGSVGElement>): void => {
    const hand = held.current;
    if (hand?.pointer !== event.pointerId) return;
    const press = pressOf(event);
    onChange({
      azimuth: hand.azimuth ? rockerStep(press.x, press.half, rockers.azimuth) : 0,
      altitude: hand.altitude ? rockerStep(press.y, press.half, rockers.altitude) : 0,
    });
  };
  const release = (event: PointerEvent<SVGSVGElement>): void => {
    if (held.current?.pointer !== event.pointerId) return;
    held.current = null;
    onChange({ azimuth: 0, altitude: 0 });
  };
  return (
    <svg
      viewBox="-108 -108 216 216"
      aria-hidden="true"
      data-control="rockers"
      className={`size-full touch-none overflow-visible select-none ${disabled ? 'opacity-45' : 'cursor-pointer'}`}
      onPointerDown={(event) => {
        if (disabled || event.button !== 0 || held.current !== null) return;
        // Text that was selected elsewhere would be dragged instead.
        event.preventDefault();
        const press = pressOf(event);
        const reach = (halfWidth / half) * press.half;
        const inMiddle = Math.abs(press.x) <= reach && Math.abs(press.y) <= reach;
        const along = Math.abs(press.x) > Math.abs(press.y);
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = {
          pointer: event.pointerId,
          azimuth: inMiddle || along,
          altitude: inMiddle || !along,
        };
        follow(event);
      }}
      onPointerMove={follow}
      onPointerUp={release}
      onPointerCancel={release}
      onLostPointerCapture={release}
    >
      <Strip step={rockers.azimuth} />
      <g transform="rotate(-90)">
        <Strip step={rockers.altitude} />
      </g>
      <g
        transform={`translate(${String(rockerPlace(rockers.azimuth) * half)} ${String(-rockerPlace(rockers.altitude) * half)})`}
      >
        <circle r="21" fill="var(--lamp)" stroke="var(--lamp-edge)" strokeWidth="2" />
        <path
          d="M-8 0 H8 M0 -8 V8"
          stroke="var(--on-lamp)"
          strokeWidth="2.4"
          strokeLinecap="round"
          fill="none"
        />
      </g>
    </svg>
  );
}

/** One strip lying across: five marks to each side that grow with the speed; the one in use is filled. */
function Strip({ step }: { step: number }) {
  return (
    <>
      <path
        d={stripPath}
        fill="var(--sunken)"
        stroke="var(--strong)"
        strokeWidth="1.6"
        strokeLinejoin="round"
      />
      {[-1, 1].map((side) =>
        steps.map((mark) => {
          const x = side * rockerPlace(mark) * half;
          const tall = 2.5 + mark * 2.7;
          const inUse = Math.sign(step) === side && Math.abs(step) >= mark;
          return (
            <path
              key={`${String(side)} ${String(mark)}`}
              d={`M${String(x)} ${String(-tall)} V${String(tall)}`}
              stroke={inUse ? 'var(--accent)' : 'var(--strong)'}
              strokeWidth={inUse ? 6 : 2.6}
              strokeLinecap="round"
            />
          );
        }),
      )}
    </>
  );
}
