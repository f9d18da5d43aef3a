'use client';

import { useEffect, useRef } from 'react';

type CurrentWireProps = {
  from: { x: number; y: number };
  to: { x: number; y: number };
  /** How far the wire hangs through. */
  sag?: number;
  /** What flows, from the first end to the second; 0 is nothing. */
  amps: number;
};

/** Dashes this far apart; one tenth of an ampere moves them by so many a second. */
const dash = 14;
const dashesPerSecond = (amps: number): number => Math.min(6, 1 + amps * 3);

/** A wire that hangs from one plug to the next; what flows in it is seen to move, unless one asked for rest. */
export function CurrentWire({ from, to, sag = 40, amps }: CurrentWireProps) {
  const flow = useRef<SVGPathElement>(null);
  const path = `M${String(from.x)} ${String(from.y)} C${String(from.x + (to.x - from.x) * 0.25)} ${String(from.y + sag)} ${String(to.x - (to.x - from.x) * 0.25)} ${String(to.y + sag)} ${String(to.x)} ${String(to.y)}`;
  useEffect(() => {
    const shown = flow.current;
    if (shown === null || amps === 0) return;
    if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    const moving = shown.animate([{ strokeDashoffset: 0 }, { strokeDashoffset: -dash }], {
      duration: 1000 / dashesPerSecond(amps),
      iterations: Infinity,
    });
    return () => {
      moving.cancel();
    };
  }, [amps]);
  return (
    <g fill="none" strokeLinecap="round" aria-hidden="true">
      <path d={path} stroke="var(--land-near)" strokeWidth="9" />
      <path d={path} stroke="var(--sky-line)" strokeWidth="5" />
      {amps === 0 ? null : (
        <path
          ref={flow}
          d={path}
          stroke="var(--sky-lamp)"
          strokeWidth="4"
          strokeDasharray={`${String(dash / 2)} ${String(dash / 2)}`}
          strokeLinecap="butt"
        />
      )}
    </g>
  );
}
