'use client';

import { useState } from 'react';
import { classNames } from '@/components/ui/class-names';
import { CardPaper } from './card-paper';
import { shownSky, type ClockViewProps } from './clock-view';
import { CompassBench } from './compass-bench';
import { SkyPane } from './sky-pane';

type Pane = 'card' | 'compass' | 'sky';
const paneNames: Readonly<Record<Pane, string>> = {
  card: 'Card',
  compass: 'Compass',
  sky: 'Two skies',
};

/** The card beside the sky it makes the mount believe in; on a phone one of them at a time. */
export function ClockDrawing(props: ClockViewProps) {
  const { variant } = props;
  const needle = variant.declinationDeg !== null;
  const [pane, setPane] = useState<Pane>('card');
  const panes: Pane[] = needle ? ['card', 'compass', 'sky'] : ['card', 'sky'];
  // Beside the card there is always something: the first of the others until one is chosen.
  const beside: Pane = pane === 'card' ? (needle ? 'compass' : 'sky') : pane;
  const sky = shownSky(props);
  return (
    <div className="flex h-full min-h-0 flex-col bg-sunken">
      <div
        role="group"
        aria-label="What lies on the bench"
        className={classNames('flex gap-1 px-2 pt-2', !needle && 'md:hidden')}
      >
        {panes.map((name) => (
          <button
            key={name}
            type="button"
            aria-pressed={pane === name}
            onClick={() => {
              setPane(name);
            }}
            className={classNames(
              'min-h-11 rounded-t-md border border-b-0 border-strong bg-page px-4 text-soft aria-pressed:bg-panel aria-pressed:font-semibold aria-pressed:text-ink',
              name === 'card' && 'md:hidden',
              name === beside && 'md:bg-panel md:font-semibold md:text-ink',
            )}
          >
            {paneNames[name]}
          </button>
        ))}
      </div>
      <div className="flex min-h-0 flex-1">
        <div
          className={classNames(
            'min-h-0 overflow-y-auto p-2 md:block md:w-[22rem] md:shrink-0 md:p-4',
            pane === 'card' ? 'flex-1 md:flex-none' : 'hidden',
          )}
        >
          <CardPaper variant={variant} />
        </div>
        <div className={classNames('min-h-0 min-w-0 flex-1 md:block', pane === 'card' && 'hidden')}>
          {beside === 'compass' ? (
            <CompassBench {...props} />
          ) : (
            <SkyPane sky={sky} landings={variant.template === 'dew-on-the-card'} />
          )}
        </div>
      </div>
    </div>
  );
}
