'use client';

import { useEffect, useSyncExternalStore } from 'react';
import type { RunModel } from './run-model';
import type { RunSnapshot } from './run-snapshot';

/** What the run shows, for a panel or a table; renders only when some of it changes. */
export const useRunSnapshot = (model: RunModel): RunSnapshot =>
  useSyncExternalStore(model.subscribe, model.snapshot, model.snapshot);

/** Lets the sky's time run while the page shows, and keeps the learner's wish for less motion. */
export function useRunTime(model: RunModel): void {
  useEffect(() => {
    let frame = 0;
    const tick = (nowMs: number): void => {
      model.tick(nowMs);
      frame = window.requestAnimationFrame(tick);
    };
    frame = window.requestAnimationFrame(tick);
    return () => {
      window.cancelAnimationFrame(frame);
    };
  }, [model]);
  useEffect(() => {
    const wish = window.matchMedia('(prefers-reduced-motion: reduce)');
    const follow = (): void => {
      model.preferLessMotion(wish.matches);
    };
    follow();
    wish.addEventListener('change', follow);
    return () => {
      wish.removeEventListener('change', follow);
    };
  }, [model]);
}
