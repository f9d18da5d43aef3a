'use client';

import type { SkyLight } from '@/components/sky/sky-lights';
import { Button } from '@/components/ui/button';
import { LightCard } from '../pair/light-card';
import type { RunModel } from './run-model';
import { choosingTask } from './run-words';
import { useAskedStar } from './use-asked-star';
import { useRunSnapshot } from './use-run-lab';

type ChooseStepProps = {
  model: RunModel;
  /** A light the learner looks at, to know where to go. */
  picked: SkyLight | null;
  inTable: boolean;
  /** Beside the picture; the table has its own form for it. */
  onSetStart: () => void;
};

/** What there is to choose from: the star itself is named to the mount in `ChooseControl`. */
export function ChooseStep({ model, picked, inTable, onSetStart }: ChooseStepProps) {
  const { stage } = useRunSnapshot(model);
  const asked = useAskedStar(model);
  return (
    <section aria-label="Task" className="space-y-3">
      <p>{choosingTask[asked?.by ?? 'own']}</p>
      {asked !== null ? null : (
        <>
          {model.variant.proposals === null ? null : (
            <p className="rounded-md bg-sunken p-3">
              The mount has no further star to propose. Name one from its list.
            </p>
          )}
          {picked !== null && !inTable ? <LightCard light={picked} letter={null} /> : null}
        </>
      )}
      {stage === 'choose-first' && !inTable ? (
        <Button className="w-full" onClick={onSetStart}>
          Set the start position again
        </Button>
      ) : null}
    </section>
  );
}
