'use client';

import { useEffect, useSyncExternalStore } from 'react';
import type { RunStage } from '@/lib/alignment/run-state';
import type { RunModel } from './run-model';
import { Letters } from './twin-rows';
import { TwinEyepiece } from './twin-eyepiece';
import { TwinEye } from './twin-eye';
import { TwinFinder } from './twin-finder';
import { TwinMoves } from './twin-moves';
import { TwinStart } from './twin-start';
import { useRunSnapshot } from './use-run-lab';

/** Before a star was chosen and after the judgement there is nothing to steer to. */
const steering: readonly RunStage[] = ['centre-first', 'centre-second', 'check-third'];

/** Letters outlive the table: who looks at the sky in between finds them again. */
const lettersOf = new WeakMap<RunModel, Letters>();

function lettersFor(model: RunModel): Letters {
  const known = lettersOf.get(model);
  if (known !== undefined) return known;
  const letters = new Letters();
  lettersOf.set(model, letters);
  return letters;
}

/**
 * The run without a picture: what eye, finder and eyepiece show, judged as roughly as by looking, and
 * moves by number. The sky waits for each decision and moves on only with what is done. Which star,
 * confirming, the result and the judgement are in the panel, the same as beside the picture.
 */
export function RunTable({ model }: { model: RunModel }) {
  const { stage } = useRunSnapshot(model);
  useMoment(model);
  useEffect(() => {
    model.holdSky(true);
    return () => {
      model.holdSky(false);
    };
  }, [model]);
  const letters = lettersFor(model);
  const loose = stage === 'start-position';
  return (
    <div className="space-y-6 p-4">
      {loose || stage === 'choose-first' ? <TwinStart model={model} loose={loose} /> : null}
      {loose ? null : (
        <>
          {steering.includes(stage) ? <TwinMoves model={model} letters={letters} /> : null}
          <TwinEyepiece model={model} letters={letters} />
          <TwinFinder model={model} letters={letters} />
        </>
      )}
      <TwinEye key={loose ? 'loose' : 'locked'} model={model} letters={letters} loose={loose} />
    </div>
  );
}

/** Renders anew whenever something was done or the sky has moved on, also where the panels see no news. */
const useMoment = (model: RunModel): string =>
  useSyncExternalStore(
    model.onFrame,
    () => `${String(model.done.length)} ${String(model.atMs)}`,
    () => '',
  );
