'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { standStepName, standSteps } from '@/lib/drawings/step-words';
import { ShapePicture } from '../what-is-in-the-case/shape-picture';
import { stepsDrawing, stepsInWords, waitsFor, type BuildStep } from './steps-facts';

/** The steps, to be taken in any order that holds; one that cannot be taken yet says what it waits for. */
export function StepsFigure() {
  const [done, setDone] = useState<readonly BuildStep[]>([]);
  const [told, setTold] = useState('');
  const words = stepsInWords(done);
  const take = (step: BuildStep) => {
    const waiting = waitsFor(step, done);
    setTold(waiting ?? `${standStepName[step]}: done.`);
    if (waiting === null) setDone([...done, step]);
  };
  return (
    <div>
      <ShapePicture drawing={stepsDrawing(done, words)} label={words} />
      <p role="status" className="mt-2">
        {told === '' ? words : `${told} ${words}`}
      </p>
      <div className="no-print mt-3 flex flex-wrap gap-2">
        {standSteps.map((step) => (
          <Button key={step} aria-pressed={done.includes(step)} onClick={() => take(step)}>
            {done.includes(step) ? '✓ ' : ''}
            {standStepName[step]}
          </Button>
        ))}
        <Button
          variant="plain"
          onClick={() => {
            setDone([]);
            setTold('');
          }}
        >
          Start afresh
        </Button>
      </div>
    </div>
  );
}
