'use client';

import { useEffect, useRef } from 'react';
import { FieldPainter, type FieldKind } from './field-painter';
import type { RunModel } from './run-model';

/** A pixel ratio above this costs an old laptop more than it shows. */
const highestPixelRatio = 1.5;
/** While the tube stands, the sky's drift is drawn this often. */
const restingMs = 90;

const nothingToDraw = (): void => undefined;

type FieldViewProps = {
  model: RunModel;
  kind: FieldKind;
  showRing: boolean;
  /** The browser gives no drawing surface. */
  onLost: () => void;
};

/** The finder's window or the eyepiece, drawn anew when tube or sky has moved. */
export function FieldView({ model, kind, showRing, onLost }: FieldViewProps) {
  const host = useRef<HTMLDivElement>(null);
  const latest = useRef({ showRing, onLost, redraw: nothingToDraw });
  useEffect(() => {
    latest.current.showRing = showRing;
    latest.current.onLost = onLost;
    latest.current.redraw();
  });

  useEffect(() => {
    const box = host.current;
    if (box === null) return;
    const canvas = document.createElement('canvas');
    const pen = canvas.getContext('2d');
    if (pen === null) {
      latest.current.onLost();
      return;
    }
    canvas.setAttribute('aria-hidden', 'true');
    canvas.className = 'block';
    box.append(canvas);
    const painter = new FieldPainter(model, kind);
    let sizePx = 0;
    let paintedAtMs = -Infinity;
    let x = NaN;
    let y = NaN;
    let focus = NaN;

    const paint = (): void => {
      if (sizePx < 40) return;
      paintedAtMs = performance.now();
      painter.paint(pen, sizePx, latest.current.showRing);
    };
    const follow = (): void => {
      const [east, north] = kind === 'finder' ? model.pose.dot : model.pose.tube;
      const moved = east !== x || north !== y || model.focus !== focus;
      if (!moved && performance.now() - paintedAtMs < restingMs) return;
      x = east;
      y = north;
      focus = model.focus;
      paint();
    };
    const fit = (): void => {
      const { width, height } = box.getBoundingClientRect();
      sizePx = Math.floor(Math.min(width, height));
      const ratio = Math.min(highestPixelRatio, window.devicePixelRatio);
      canvas.width = canvas.height = Math.max(1, Math.round(sizePx * ratio));
      canvas.style.width = canvas.style.height = `${String(sizePx)}px`;
      pen.setTransform(ratio, 0, 0, ratio, 0, 0);
      paint();
    };
    const watcher = new ResizeObserver(fit);
    watcher.observe(box);
    const stop = model.onFrame(follow);
    const held = latest.current;
    held.redraw = paint;
    return () => {
      held.redraw = nothingToDraw;
      stop();
      watcher.disconnect();
      canvas.remove();
    };
  }, [model, kind]);

  return <div ref={host} className="grid size-full place-items-center" />;
}
