'use client';

import type { PointerEvent as ReactPointerEvent, RefObject } from 'react';
import { useEffect, useMemo, useRef } from 'react';
import { mouseReachPx, pickLight, touchReachPx } from './pick-light';
import type { SkyLight } from './sky-lights';
import type { SkyView } from './sky-view';

/** A press that moves less than this is a pick, not a drag. CSS pixels. */
const dragStartsPx = 6;

type Press = { x: number; y: number; startX: number; startY: number };

export type SkyGestures = {
  onPointerDown: (event: ReactPointerEvent<HTMLElement>) => void;
  onPointerMove: (event: ReactPointerEvent<HTMLElement>) => void;
  onPointerUp: (event: ReactPointerEvent<HTMLElement>) => void;
  onPointerCancel: (event: ReactPointerEvent<HTMLElement>) => void;
  onPointerLeave: (event: ReactPointerEvent<HTMLElement>) => void;
};

type GestureInput = {
  surface: RefObject<HTMLElement | null>;
  view: SkyView;
  lights: RefObject<readonly SkyLight[]>;
  onPick: RefObject<(light: SkyLight | null) => void>;
};

/**
 * Drag to look around, pinch or wheel to zoom, press to pick. The surface has `touch-action: none`,
 * so that the page never takes a gesture away; the wheel is kept from scrolling the page by a
 * listener that may prevent it.
 */
export function useSkyGestures({ surface, view, lights, onPick }: GestureInput): SkyGestures {
  useEffect(() => {
    const element = surface.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      view.zoomBy(Math.exp(Math.max(-120, Math.min(120, event.deltaY)) * 0.0016));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => {
      element.removeEventListener('wheel', onWheel);
    };
  }, [surface, view]);

  const hands = useRef({ presses: new Map<number, Press>(), dragging: false, pinched: false });

  return useMemo(() => {
    const placeOf = (event: ReactPointerEvent<HTMLElement>): { x: number; y: number } => {
      const box = event.currentTarget.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const spread = (): number => {
      const [first, second] = [...hands.current.presses.values()];
      if (first === undefined || second === undefined) return 0;
      return Math.hypot(first.x - second.x, first.y - second.y);
    };
    const end = (event: ReactPointerEvent<HTMLElement>): void => {
      const held = hands.current;
      held.presses.delete(event.pointerId);
      if (held.presses.size > 0) return;
      held.dragging = false;
      held.pinched = false;
    };

    return {
      onPointerDown(event) {
        if (event.button !== 0) return;
        const at = placeOf(event);
        event.currentTarget.setPointerCapture(event.pointerId);
        const held = hands.current;
        held.presses.set(event.pointerId, { ...at, startX: at.x, startY: at.y });
        if (held.presses.size > 1) held.pinched = true;
      },
      onPointerMove(event) {
        const at = placeOf(event);
        const held = hands.current;
        const press = held.presses.get(event.pointerId);
        if (press === undefined) {
          if (event.pointerType === 'mouse')
            view.point(pickLight(lights.current, view, at, mouseReachPx));
          return;
        }
        const before = spread();
        const moved = { x: at.x - press.x, y: at.y - press.y };
        if (held.presses.size === 1) {
          const far = Math.hypot(at.x - press.startX, at.y - press.startY) > dragStartsPx;
          if (!held.dragging && !far) return;
          held.dragging = true;
        }
        press.x = at.x;
        press.y = at.y;
        const share = 1 / held.presses.size;
        view.dragBy(moved.x * share, moved.y * share);
        const after = spread();
        if (before > 0 && after > 0) view.zoomBy(before / after);
        view.point(null);
      },
      onPointerUp(event) {
        const held = hands.current;
        const wasPick = held.presses.has(event.pointerId) && !held.dragging && !held.pinched;
        const at = placeOf(event);
        end(event);
        if (!wasPick) return;
        const reach = event.pointerType === 'mouse' ? mouseReachPx : touchReachPx;
        onPick.current(pickLight(lights.current, view, at, reach));
      },
      onPointerCancel: end,
      onPointerLeave(event) {
        if (!hands.current.presses.has(event.pointerId)) view.point(null);
      },
    };
  }, [view, lights, onPick]);
}
