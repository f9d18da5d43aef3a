'use client';

import { useRef, type PointerEvent } from 'react';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import type { LegIndex } from '@/lib/levelling/tripod';
import type { TripodHand } from './use-tripod-hand';

/** A leg slides by so much for each pixel of the hand: finer than it is drawn. */
const mmPerPixel = 0.4;
/** A hand that trembles by less still only presses. */
const leastPixels = 4;

/** A leg pulled by a pointer: up and it grows, down and it shortens. A locked one says that it is. */
export function useLegDrag(variant: LevelVariant, hand: TripodHand, leg: LegIndex) {
  const { lengthMm, open } = hand.state.legs[leg];
  const { legMinMm, legMaxMm } = variant.site;
  const held = useRef<{ pointer: number; fromY: number; fromMm: number; pulls: boolean } | null>(
    null,
  );
  const pulled = useRef(false);
  const slideTo = (mm: number): void => {
    const toMm = Math.min(legMaxMm, Math.max(legMinMm, Math.round(mm)));
    if (!open || toMm !== lengthMm) hand.act({ do: 'slide', leg, toMm }, { merge: true });
  };
  const letGo = (): void => {
    held.current = null;
  };
  return {
    slideTo,
    /** Whether the press that just ended was a pull: it is then no click. */
    wasPull: () => pulled.current,
    handlers: {
      onPointerDown: (event: PointerEvent<SVGGElement>) => {
        if (event.button !== 0) return;
        pulled.current = false;
        event.currentTarget.setPointerCapture(event.pointerId);
        const { pointerId: pointer, clientY: fromY } = event;
        held.current = { pointer, fromY, fromMm: lengthMm, pulls: false };
      },
      onPointerMove: (event: PointerEvent<SVGGElement>) => {
        const by = held.current;
        if (by?.pointer !== event.pointerId) return;
        const upPixels = by.fromY - event.clientY;
        if (!by.pulls) {
          if (Math.abs(upPixels) < leastPixels) return;
          by.pulls = true;
          pulled.current = true;
          if (!open) hand.act({ do: 'slide', leg, toMm: lengthMm });
        }
        if (open) slideTo(by.fromMm + upPixels * mmPerPixel);
      },
      onPointerUp: letGo,
      onPointerCancel: letGo,
    },
  };
}
