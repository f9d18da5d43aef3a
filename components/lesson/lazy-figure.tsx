'use client';

import { useEffect, useRef, useState, type ComponentType, type ReactNode } from 'react';
import type { FigureData } from './figures/figure-data';

const loaders = {
  'separation-and-hit-rate': async () =>
    (await import('./figures/separation-figure')).SeparationFigure,
  'altitude-limits': async () => (await import('./figures/altitude-figure')).AltitudeFigure,
} satisfies Record<string, () => Promise<ComponentType<FigureData>>>;

type LazyFigureProps = {
  name: keyof typeof loaders;
  data: FigureData;
  /** The figure as it starts, drawn by the server: for paper, for no script, and while it loads. */
  still: ReactNode;
};

/**
 * Fetches a figure's code when its place is about to be scrolled into view, so that a lesson's first
 * load stays small. Without script, and on paper, the still picture remains.
 */
export function LazyFigure({ name, data, still }: LazyFigureProps) {
  const place = useRef<HTMLDivElement>(null);
  const [Live, setLive] = useState<ComponentType<FigureData> | null>(null);
  const [failed, setFailed] = useState(false);

  useEffect(() => {
    const element = place.current;
    if (element === null || Live !== null || failed) return;
    let wanted = true;
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some((entry) => entry.isIntersecting)) return;
        observer.disconnect();
        loaders[name]().then(
          (figure) => {
            if (wanted) setLive(() => figure);
          },
          () => {
            if (wanted) setFailed(true);
          },
        );
      },
      { rootMargin: '300px' },
    );
    observer.observe(element);
    return () => {
      wanted = false;
      observer.disconnect();
    };
  }, [Live, failed, name]);

  return (
    <div ref={place} data-live={Live !== null}>
      {Live === null ? still : <Live {...data} />}
      {failed ? (
        <p role="status" className="no-print text-sm text-caution">
          The moving figure could not be fetched.{' '}
          <button type="button" className="link" onClick={() => setFailed(false)}>
            Try again
          </button>
        </p>
      ) : null}
    </div>
  );
}
