'use client';

import { Button } from '@/components/ui/button';
import type { RunModel } from './run-model';
import { declinationInWords } from './run-words';
import type { StartChoice } from './start-choice';

/** Turn the tube to true north and level it; then lock the clutches. */
export function StartStep({ model, inTable }: { model: RunModel; inTable: boolean }) {
  const { scenario, setup } = model.variant;
  return (
    <section aria-label="Start position" className="space-y-3">
      <p>
        This mount wants to start with its tube level and facing true north.{' '}
        {inTable
          ? 'Set it in the table.'
          : 'The clutches are loose: turn the tube over the compass, and tip it until the bubble stands in the middle.'}
      </p>
      <p className="rounded-md bg-sunken p-3 text-sm">
        {declinationInWords(setup.declinationDeg, scenario.place.latitudeDeg)}
      </p>
    </section>
  );
}

type StartControlProps = { model: RunModel; start: StartChoice; onLocked: () => void };

/** What ends the step, always in reach. */
export function StartControl({ model, start, onLocked }: StartControlProps) {
  return (
    <section
      aria-label="Clutches"
      className="select-none border-t-2 border-strong bg-panel px-3 py-2.5 lg:border-s-2 lg:px-5 lg:py-4"
    >
      <Button
        variant="primary"
        size="large"
        className="w-full"
        onClick={() => {
          if (model.setStart(start.azimuthDeg, start.altitudeDeg)) onLocked();
        }}
      >
        Lock the clutches
      </Button>
    </section>
  );
}
