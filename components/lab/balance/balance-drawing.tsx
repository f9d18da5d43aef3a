'use client';

import { MountSide } from '@/components/telescope/side-view';
import { darkPaint, fittingPaint } from '@/components/telescope/paint';
import { tubeInClamp } from '@/lib/balance/tube-in-clamp';
import { torqueNm } from '@/lib/balance/torque';
import type { BalanceState } from '@/lib/balance/tube-bench';
import { LivePlot } from './live-plot';
import { TubeControls } from './tube-controls';
import { TubeFigure } from './tube-figure';
import { TubeHandle } from './tube-handle';
import { useTubeHand, type BalanceViewProps } from './use-tube-hand';

/** The telescope from the side; the tube slides, is raised by hand, and creeps when it is let go. */
export function BalanceDrawing(props: BalanceViewProps) {
  const { variant, mode } = props;
  const hand = useTubeHand(props);
  const { state } = hand;
  return (
    <div className="on-sky flex size-full flex-col">
      <svg
        viewBox="-172 -172 344 302"
        className="block min-h-0 w-full flex-1"
        role="group"
        aria-label="The telescope from the side"
      >
        <path d="M-400 116 Q-60 111 0 116 T400 114 V400 H-400 Z" fill="var(--land)" />
        <TubeHandle hand={hand} variant={variant}>
          <g style={tubeMotion(variant, state)}>
            <TubeFigure variant={variant} on={state.on} clampMm={state.clampMm} />
          </g>
        </TubeHandle>
        <MountSide />
        <Clamp variant={variant} state={state} />
        {state.handOn ? <Hand altitudeDeg={state.altitudeDeg} /> : null}
        <g fill="var(--on-sky-soft)" fontSize="10">
          <text x="168" y="-160" textAnchor="end">
            front this way →
          </text>
        </g>
      </svg>
      <div className="flex flex-col gap-2 border-t border-(--sky-line) bg-page p-3 text-ink xl:flex-row xl:items-center xl:justify-between">
        <TubeControls {...hand} />
        <LivePlot variant={variant} state={state} mode={mode} className="h-28 shrink-0 sm:h-32" />
      </div>
    </div>
  );
}

/**
 * The tube turned to its altitude. By hand it follows at once; crept, it goes as fast as its weight
 * outpulls the clutch; fallen, it lies at the foot of the tripod.
 */
function tubeMotion(variant: BalanceViewProps['variant'], state: BalanceState) {
  if (state.fallen)
    return {
      transform: 'translate(46px, 96px) rotate(-6deg)',
      transition: 'transform 0.5s ease-in',
    };
  const turned = { transform: `rotate(${(-state.altitudeDeg).toFixed(2)}deg)` };
  const last = state.trials.at(-1);
  if (state.handOn || last === undefined) return turned;
  const wayDeg = Math.abs(last.restDeg - last.altitudeDeg);
  const pull = Math.abs(torqueNm(tubeInClamp(variant, state), last.altitudeDeg));
  const degPerSecond = 20 * Math.min(4, pull / variant.holdingTorqueNm);
  const seconds = Math.max(0.3, Math.min(4, wayDeg / degPerSecond));
  return { ...turned, transition: `transform ${seconds.toFixed(2)}s ease-in` };
}

/** Its jaws round the bar, the knob that locks them, and the stop screw below. */
function Clamp({ variant, state }: { variant: BalanceViewProps['variant']; state: BalanceState }) {
  const gap = state.clampOpen ? 9.5 : 6;
  return (
    <g style={state.fallen ? undefined : tubeMotion(variant, state)}>
      <rect x="-8.5" y={-gap - 4} width="17" height="5" rx="1" {...darkPaint} />
      <rect x="-8.5" y={gap - 1} width="17" height="5" rx="1" {...darkPaint} />
      <circle cx="0" cy={-gap - 8} r="5" {...fittingPaint} />
      <path
        d={`M0 ${String(-gap - 11)} v6`}
        stroke="var(--land-near)"
        strokeWidth="1.6"
        transform={state.clampOpen ? `rotate(80 0 ${String(-gap - 8)})` : undefined}
      />
      <rect
        x="4"
        y={state.stopIn ? gap + 2 : gap + 10}
        width="4"
        height="9"
        rx="1"
        fill="var(--sky-lamp)"
        stroke="var(--land-near)"
      />
    </g>
  );
}

/** A cupped hand under the front of the tube. */
function Hand({ altitudeDeg }: { altitudeDeg: number }) {
  return (
    <g transform={`rotate(${(-altitudeDeg).toFixed(2)}) translate(52 30)`} aria-hidden="true">
      <path
        d="M-20 -4 C-22 -14 -15 -15 -14 -7 L-11 1 C-4 5 8 5 14 -1 L18 -9 C22 -14 27 -9 24 -3 L16 12 C14 17 12 26 14 40 L-8 40 C-7 28 -9 20 -13 13 Z"
        fill="var(--sky-lamp)"
        stroke="var(--land-near)"
        strokeWidth="1.5"
        strokeLinejoin="round"
      />
    </g>
  );
}
