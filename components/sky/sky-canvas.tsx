'use client';

import { createRoot, extend } from '@react-three/fiber';
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import {
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  Points,
  ShaderMaterial,
  SphereGeometry,
  Sprite,
  SpriteMaterial,
} from 'three';
import { skyRadius } from './to-scene';
import type { SkyView } from './sky-view';

// Only what the scene uses: the renderer's whole catalogue would double what a school has to load.
extend({
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  Points,
  ShaderMaterial,
  SphereGeometry,
  Sprite,
  SpriteMaterial,
});

type SkyRoot = ReturnType<typeof createRoot>;

type SkyCanvasProps = {
  view: SkyView;
  /** The browser gave no WebGL after all, or took it away. */
  onLost: () => void;
  children: ReactNode;
};

/** A pixel ratio above this costs an old laptop more than it shows. */
const highestPixelRatio = 1.5;

/**
 * The drawing surface: a canvas, and the renderer's own React root in it. Frames are drawn on demand
 * only. Each mount gets a canvas of its own, since a lost or disposed context cannot be used again.
 */
export function SkyCanvas({ view, onLost, children }: SkyCanvasProps) {
  const host = useRef<HTMLDivElement>(null);
  const root = useRef<SkyRoot | null>(null);
  const latest = useRef({ children, onLost });
  useEffect(() => {
    latest.current = { children, onLost };
  });

  useEffect(() => {
    const box = host.current;
    if (box === null) return;
    const canvas = document.createElement('canvas');
    canvas.className = 'block size-full';
    canvas.setAttribute('aria-hidden', 'true');
    box.append(canvas);
    const made = createRoot(canvas);
    root.current = made;
    let ended = false;
    const lost = (event?: Event): void => {
      event?.preventDefault();
      if (!ended) latest.current.onLost();
    };
    canvas.addEventListener('webglcontextlost', lost);

    const fit = (): void => {
      const { width, height } = box.getBoundingClientRect();
      if (width < 1 || height < 1) return;
      view.resize(width, height);
      made
        .configure({
          frameloop: 'demand',
          flat: true,
          dpr: Math.min(highestPixelRatio, window.devicePixelRatio),
          size: { width, height, top: 0, left: 0 },
          camera: { near: skyRadius / 100, far: skyRadius * 2, position: [0, 0, 0] },
          gl: {
            antialias: false,
            alpha: false,
            depth: false,
            stencil: false,
            powerPreference: 'low-power',
          },
        })
        .then(
          () => {
            if (!ended) made.render(latest.current.children);
          },
          () => {
            lost();
          },
        );
    };
    const watcher = new ResizeObserver(fit);
    watcher.observe(box);
    return () => {
      ended = true;
      watcher.disconnect();
      root.current = null;
      made.unmount();
      canvas.remove();
    };
  }, [view]);

  useEffect(() => {
    if (root.current?.ready.status === 'fulfilled' && view.widthPx > 1)
      root.current.render(children);
  }, [children, view]);

  return <div ref={host} className="absolute inset-0" />;
}
