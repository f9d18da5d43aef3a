import { useId, type ReactNode } from 'react';
import type { FigureName } from '@/lib/content/lesson-names';
import { AltitudeDrawing } from './figures/altitude-drawing';
import { altitudeFacts } from './figures/altitude-facts';
import { altitudeWords } from './figures/altitude-words';
import {
  startingAltitudeDeg,
  startingLatitudeDeg,
  startingPair,
  type FigureData,
} from './figures/figure-data';
import { FistsDrawing } from './figures/fists-drawing';
import { pairFacts } from './figures/pair-facts';
import { SeparationDrawing } from './figures/separation-drawing';
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
      className="keep-together my-6 border-y-2 border-strong bg-panel px-3 py-4 sm:px-5"
    >
      {drawing(name, data)}
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

function drawing(name: FigureName, data: FigureData): ReactNode {
  switch (name) {
    case 'fists-up':
      return <FistsDrawing label="Three fists reach from level to a star at 30°" />;
    case 'separation-and-hit-rate': {
      const kit = data.kits[0];
      if (kit === undefined) return null;
      const facts = pairFacts(kit, startingPair);
      return (
        <LazyFigure
          name={name}
          data={data}
          still={<SeparationDrawing stars={startingPair} facts={facts} label={facts.advice} />}
        />
      );
    }
    case 'altitude-limits': {
      const facts = altitudeFacts(startingAltitudeDeg, startingLatitudeDeg);
      const label = altitudeWords(startingAltitudeDeg, facts);
      return (
        <LazyFigure
          name={name}
          data={data}
          still={<AltitudeDrawing altitudeDeg={startingAltitudeDeg} facts={facts} label={label} />}
        />
      );
    }
  }
}
