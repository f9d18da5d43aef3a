'use client';

import { useRef, useState, type PointerEvent } from 'react';
import { bayUnder, type BenchLayout } from './bench-layout';

/** A cell on its way: under the pointer, in the drawing's units. */
export type Carried = { cell: string; x: number; y: number };

type CellHandOptions = {
  layout: BenchLayout;
  bays: number;
  /** A cell let go over a bay. */
  onDrop: (cell: string, bay: number) => void;
};

/** Fewer units than this is a tap, not a drag. */
const leastDrag = 8;

/**
 * The hand that takes cells up: by a tap, a key press, or by dragging one into a bay. A tap takes a
 * cell up, and another puts it back.
 */
export function useCellHand({ layout, bays, onDrop }: CellHandOptions) {
  const [held, setHeld] = useState<string | null>(null);
  const [carried, setCarried] = useState<Carried | null>(null);
  const from = useRef<{ pointer: number; x: number; y: number } | null>(null);
  const dragged = useRef(false);

  const handlersOf = (cell: string) => ({
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      const at = pointIn(event);
      if (event.button !== 0 || at === null) return;
      dragged.current = false;
      from.current = { pointer: event.pointerId, ...at };
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent<SVGGElement>) => {
      const start = from.current;
      const at = pointIn(event);
      if (start?.pointer !== event.pointerId || at === null) return;
      if (!dragged.current && Math.hypot(at.x - start.x, at.y - start.y) < leastDrag) return;
      dragged.current = true;
      setHeld(cell);
      setCarried({ cell, ...at });
    },
    onPointerUp: (event: PointerEvent<SVGGElement>) => {
      if (from.current?.pointer !== event.pointerId) return;
      from.current = null;
      setCarried(null);
      if (!dragged.current) return;
      setHeld(null);
      const at = pointIn(event);
      const bay = at === null ? null : bayUnder(layout, bays, at);
      if (bay !== null) onDrop(cell, bay);
    },
    onPointerCancel: () => {
      from.current = null;
      setCarried(null);
    },
  });

  return {
    held,
    carried,
    handlersOf,
    letGo: () => {
      setHeld(null);
    },
    /** A tap or a key press; the click that ends a drag is none. */
    press: (cell: string) => {
      if (dragged.current) dragged.current = false;
      else setHeld(held === cell ? null : cell);
    },
  };
}

/** The pointer in the units of the drawing it is over. */
function pointIn(event: PointerEvent<SVGGElement>): { x: number; y: number } | null {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
  if (matrix === null || matrix === undefined) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { x, y };
}
