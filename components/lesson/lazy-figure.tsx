'use client';

import { useEffect, useRef, useState, type ComponentType, type ReactNode } from 'react';
import type { FigureName } from '@/lib/content/figure-names';
import { allLive } from './figures/all-live';
import type { FigureData } from './figures/figure-data';

type LazyFigureProps = {
  name: FigureName;
  data: FigureData;
  /** The figure as it starts, drawn by the server: for paper, for no script, and while it loads. */
  still: ReactNode;
};

/**
 * Fetches a figure's code when its place is about to be scrolled into view, so that a lesson's first
 * load stays small. Without script, on paper, and where nothing moves, the still picture remains.
 */
export function LazyFigure({ name, data, still }: LazyFigureProps) {
  const place = useRef<HTMLDivElement>(null);
  const [Live, setLive] = useState<ComponentType<FigureData> | null>(null);
  const [failed, setFailed] = useState(false);

  useEffect(() => {
    const element = place.current;
    const load = allLive[name];
    if (element === null || load === undefined || Live !== null || failed) return;
    let wanted = true;
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some((entry) => entry.isIntersecting)) return;
        observer.disconnect();
        load().then(
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
