'use client';

import { MountSide } from '@/components/telescope/side-view';
import { darkPaint, fittingPaint } from '@/components/telescope/paint';
import { tubeInClamp } from '@/lib/balance/tube-in-clamp';
import { torqueNm } from '@/lib/balance/torque';
import type { BalanceState } from '@/lib/balance/tube-bench';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { LivePlot } from './live-plot';
import { TubeControls } from './tube-controls';
import { mmText } from './balance-words';
import { mmPerUnit, TubeFigure } from './tube-figure';
import { TubeHandle } from './tube-handle';
import { useTubeHand, type BalanceViewProps } from './use-tube-hand';

/** The telescope from the side; the tube slides, is raised by hand, and creeps when it is let go. */
export function BalanceDrawing(props: BalanceViewProps) {
  const { variant, mode } = props;
  const hand = useTubeHand(props);
  const { state } = hand;
  return (
    <div className="on-sky flex size-full flex-col [container-type:size]">
      <svg
        viewBox={viewBoxFor(variant)}
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
        {/* They stand before the tube, and a drag that begins on them is meant for it. */}
        <g pointerEvents="none">
          <MountSide />
          <Clamp variant={variant} state={state} />
          {state.handOn ? <Hand variant={variant} altitudeDeg={state.altitudeDeg} /> : null}
        </g>
        <g fill="var(--on-sky)" fontSize="9" textAnchor="middle" aria-hidden="true">
          <text y="60">{mmText(state.clampMm)}</text>
          <text x="70" y="125" fill="var(--on-sky-soft)" textAnchor="start">
            front this way →
          </text>
        </g>
      </svg>
      <div className="flex flex-col gap-2 border-t border-(--sky-line) bg-page p-3 text-ink xl:flex-row xl:items-center xl:justify-between">
        <TubeControls {...hand} />
        <LivePlot
          variant={variant}
          state={state}
          mode={mode}
          className="h-28 shrink-0 sm:h-32 [@container(max-height:27rem)]:hidden"
        />
      </div>
    </div>
  );
}

/**
 * The tube turned to its altitude. By hand it follows at once; crept, it goes as fast as its weight
 * outpulls the clutch; fallen, it lies at the foot of the tripod.
 */
function tubeMotion(variant: BalanceVariant, state: BalanceState) {
  if (state.fallen) {
    const lies = 112 - variant.tubeDiameterMm / 2 / mmPerUnit;
    return {
      transform: `translate(46px, ${lies.toFixed(0)}px) rotate(-3deg)`,
      transition: 'transform 0.5s ease-in',
    };
  }
  // Free in the open clamp, it sags on the stop screw.
  if (state.clampOpen && !state.handOn)
    return {
      transform: `translate(-3px, 5px) rotate(${(3 - state.altitudeDeg).toFixed(2)}deg)`,
      transition: 'transform 0.15s ease-in',
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

/** The clamp stays on the axis, whatever becomes of the tube in it. */
const clampMotion = (variant: BalanceVariant, state: BalanceState) =>
  state.fallen || (state.clampOpen && !state.handOn)
    ? { transform: `rotate(${(-state.altitudeDeg).toFixed(2)}deg)` }
    : tubeMotion(variant, state);

/** Its jaws round the bar, the knob that locks them, and the stop screw below. */
function Clamp({ variant, state }: { variant: BalanceVariant; state: BalanceState }) {
  const gap = state.clampOpen ? 9.5 : 6;
  return (
    <g style={clampMotion(variant, state)}>
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

/** A hand under the front of the tube: the palm carries it, the thumb is on this side. */
function Hand({ variant, altitudeDeg }: { variant: BalanceVariant; altitudeDeg: number }) {
  const under = (variant.tubeDiameterMm / 2 - variant.tube.aboveAxisMm) / mmPerUnit;
  return (
    <g
      transform={`rotate(${(-altitudeDeg).toFixed(2)}) translate(46 ${under.toFixed(2)})`}
      aria-hidden="true"
      fill="var(--sky-lamp)"
      stroke="var(--land-near)"
      strokeWidth="1.5"
      strokeLinejoin="round"
    >
      <path d="M2 8 L24 42 L38 34 L18 3 Z" />
      <path d="M-20 1 C-20 -3 -15 -4 -12 0 H10 C20 0 22 6 16 10 C8 15 -6 14 -14 9 C-18 7 -20 4 -20 1 Z" />
      <path d="M4 6 C6 -2 6 -8 10 -11 C14 -13 17 -9 15 -5 C13 0 14 4 13 8 Z" />
    </g>
  );
}

/** As large as the tube allows, level and upright, wherever it is slid. */
function viewBoxFor({ bar, frontMm, tubeLengthMm, parts }: BalanceVariant): string {
  const places = parts.map(({ alongMm }) => alongMm);
  // A dew shield reaches as far before its middle as the tube's front lies behind it.
  const foremost = 2 * Math.min(frontMm, ...places) - frontMm;
  const hindmost = Math.max(frontMm + tubeLengthMm, ...places) + 30;
  const before = (bar.mostMm - foremost) / mmPerUnit;
  const behind = (hindmost - bar.leastMm) / mmPerUnit;
  const half = Math.max(before, behind) + 8;
  const top = before + 8;
  return `${(-half).toFixed(0)} ${(-top).toFixed(0)} ${(2 * half).toFixed(0)} ${(top + 130).toFixed(0)}`;
}
