'use client';

import { Button } from '@/components/ui/button';
import { NamedStar } from './named-star';
import { pressedTwice } from './press-twice';
import type { RunModel } from './run-model';
import { useAskedStar } from './use-asked-star';

/** Which star, and off: proposed, given, or named to the mount from its own list. */
export function ChooseControl({ model }: { model: RunModel }) {
  const asked = useAskedStar(model);
  return (
    <section
      aria-label="Which star"
      className="space-y-2 border-t-2 border-strong bg-panel px-3 py-2.5 lg:border-s-2 lg:px-5 lg:py-4"
    >
      {asked === null ? (
        <NamedStar model={model} />
      ) : (
        <>
          <p className="text-lg leading-snug">
            {asked.by === 'given' ? 'Your first star is ' : 'The mount proposes '}
            <strong className="font-semibold">{model.nameOf(asked.hip)}</strong>.
          </p>
          <div className="grid auto-cols-fr grid-flow-col gap-2 select-none">
            <Button
              variant="primary"
              size="large"
              className="px-2"
              onClick={() => {
                model.goTo(asked.hip);
              }}
            >
              Drive there
            </Button>
            {asked.by === 'given' ? null : (
              <Button
                className="px-2"
                onClick={() => {
                  if (!pressedTwice(model, 'another-star')) model.anotherStar();
                }}
              >
                Another star
              </Button>
            )}
          </div>
        </>
      )}
    </section>
  );
}
