'use client';

import type { KeyboardEvent, PointerEvent } from 'react';
import { useRef } from 'react';
import type { LevelVariant } from '@/lib/variants/bench/level-variant';
import { legName } from './level-words';
import { tripodShape, type LegShape } from './tripod-shape';
import type { TripodHand } from './use-tripod-hand';

type TripodHandlesProps = { variant: LevelVariant; hand: TripodHand };

/** A leg slides by so much for each pixel of the hand: finer than it is drawn. */
const mmPerPixel = 0.4;

/** What can be taken hold of at a tripod: legs that slide, locks, feet. It lies over the figure. */
export function TripodHandles({ variant, hand }: TripodHandlesProps) {
  return tripodShape(variant.site, hand.state).legs.map((shape) => (
    <g key={shape.leg}>
      <LegHandle shape={shape} variant={variant} hand={hand} />
      <Press
        at={shape.foot}
        label={`Tread in foot ${legName(shape.leg)}`}
        onPress={() => {
          hand.act({ do: 'tread-in', leg: shape.leg });
        }}
      />
      <Press
        at={shape.joint}
        label={`${hand.state.legs[shape.leg].open ? 'Lock' : 'Open'} leg ${legName(shape.leg)}`}
        onPress={() => {
          const { leg } = shape;
          hand.act({ do: hand.state.legs[leg].open ? 'lock' : 'open', leg });
        }}
      />
    </g>
  ));
}

/** Dragged up it grows, dragged down it shortens; arrow keys by 1 mm, with Shift by 10 mm. */
function LegHandle({ shape, variant, hand }: TripodHandlesProps & { shape: LegShape }) {
  const { leg, hip, foot } = shape;
  const { lengthMm, open } = hand.state.legs[leg];
  const { legMinMm, legMaxMm } = variant.site;
  const grabbed = useRef<{ pointer: number; fromY: number; fromMm: number } | null>(null);
  const slideTo = (mm: number, merge: boolean): void => {
    const toMm = Math.min(legMaxMm, Math.max(legMinMm, Math.round(mm)));
    if (!open || toMm !== lengthMm) hand.act({ do: 'slide', leg, toMm }, { merge });
  };
  const onKeyDown = (event: KeyboardEvent<SVGGElement>): void => {
    const way =
      event.key === 'ArrowUp' || event.key === 'ArrowRight'
        ? 1
        : event.key === 'ArrowDown' || event.key === 'ArrowLeft'
          ? -1
          : 0;
    if (way === 0) return;
    event.preventDefault();
    slideTo(lengthMm + way * (event.shiftKey ? 10 : 1), true);
  };
  const letGo = (): void => {
    grabbed.current = null;
  };
  return (
    <g
      role="slider"
      tabIndex={0}
      aria-label={`Leg ${legName(leg)}`}
      aria-orientation="vertical"
      aria-valuenow={lengthMm}
      aria-valuemin={legMinMm}
      aria-valuemax={legMaxMm}
      aria-valuetext={`${String(lengthMm)} mm, ${open ? 'open' : 'locked'}`}
      className={`touch-none ${open ? 'cursor-ns-resize' : 'cursor-not-allowed'}`}
      onKeyDown={onKeyDown}
      onPointerDown={(event: PointerEvent<SVGGElement>) => {
        if (event.button !== 0) return;
        event.preventDefault();
        event.currentTarget.focus({ preventScroll: true });
        event.currentTarget.setPointerCapture(event.pointerId);
        grabbed.current = { pointer: event.pointerId, fromY: event.clientY, fromMm: lengthMm };
        if (!open) hand.act({ do: 'slide', leg, toMm: lengthMm });
      }}
      onPointerMove={(event) => {
        const held = grabbed.current;
        if (held?.pointer !== event.pointerId || !open) return;
        slideTo(held.fromMm + (held.fromY - event.clientY) * mmPerPixel, true);
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <path
        d={`M${String(hip.x)} ${String(hip.y)} L${String(foot.x)} ${String(foot.y)}`}
        stroke="transparent"
        strokeWidth="40"
      />
    </g>
  );
}

function Press({
  at,
  label,
  onPress,
}: {
  at: LegShape['foot'];
  label: string;
  onPress: () => void;
}) {
  return (
    <g
      role="button"
      tabIndex={0}
      aria-label={label}
      className="cursor-pointer touch-manipulation"
      onClick={onPress}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onPress();
      }}
    >
      <title>{label}</title>
      <circle cx={at.x} cy={at.y} r="22" fill="transparent" />
    </g>
  );
}
