import { useId, type ReactNode } from 'react';
import type { FigureName } from '@/lib/content/figure-names';
import { allStills } from './figures/all-stills';
import type { FigureData } from './figures/figure-data';
import { LazyFigure } from './lazy-figure';

type FigureProps = {
  name: FigureName;
  /** What the figure shows, in words: for whoever does not see it, and for whoever wants to check. */
  alternative: string;
  data: FigureData;
  children: ReactNode;
};

/** A drawing with its caption and, folded away, the same in words. */
export function Figure({ name, alternative, data, children }: FigureProps) {
  const wordsId = useId();
  return (
    <figure
      aria-describedby={wordsId}
      // Half a sheet at most, so that a figure that has to go to the next one leaves no great gap.
      className="keep-together my-6 border-y-2 border-strong bg-panel px-3 py-4 sm:px-5 print:py-2 print:[&_svg]:max-h-[80mm]"
    >
      <LazyFigure name={name} data={data} still={allStills[name](data)} />
      <figcaption className="mt-3 max-w-measure text-sm text-soft [&_p]:inline">
        {children}
      </figcaption>
      <details className="mt-1 text-sm">
        <summary className="no-print inline-flex min-h-(--target-small) items-center text-soft underline decoration-dotted underline-offset-4">
          The figure in words
        </summary>
        <p id={wordsId} className="max-w-measure">
          {alternative}
        </p>
      </details>
    </figure>
  );
}
