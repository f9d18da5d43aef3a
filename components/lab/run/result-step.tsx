'use client';

import { arcminuteInWords } from '@/components/sky/angle-words';
import { Notice } from '@/components/ui/notice';
import { NamedStar } from './named-star';
import type { RunModel } from './run-model';
import { outcomeInWords } from './run-words';
import { useRunSnapshot } from './use-run-lab';

/** What the computer made of the two stars, the third one that tells, and whether to trust it. */
export function ResultStep({ model }: { model: RunModel }) {
  const { outcome, stage, targetHip, moving } = useRunSnapshot(model);
  const { scenario } = model.variant;
  if (outcome === null) return null;
  const words = outcomeInWords(outcome, scenario.telescope.computer);
  return (
    <section aria-label="Result" className="space-y-4">
      <Notice tone={words.tone === 'good' ? 'info' : 'caution'} title={words.title}>
        <p className="text-sm">{words.text}</p>
        {`${words.title} ${words.text}`.includes('′') ? (
          <p className="mt-1 text-sm text-soft">{arcminuteInWords}</p>
        ) : null}
      </Notice>
      {stage === 'check-third' && targetHip !== null ? (
        <p>
          {moving ? 'Driving to ' : 'The mount says that this is '}
          <strong className="font-semibold">{model.nameOf(targetHip)}</strong>.
          {moving ? '' : ' Look into the eyepiece: is it there?'}
        </p>
      ) : null}
      <details className="text-sm">
        <summary className="font-semibold">
          {stage === 'check-third' ? 'Check on another star' : 'Check on a star of your choice'}
        </summary>
        <div className="mt-2">
          <NamedStar model={model} label="The star to check on" />
        </div>
      </details>
    </section>
  );
}
