'use client';

import { angleInWords, arcminuteInWords } from '@/components/sky/angle-words';
import type { RunModel } from './run-model';
import { approachInWords, centringTask } from './run-words';
import { useRunSnapshot } from './use-run-lab';

/** Find the star, bring it to the middle: what it is called, and what the kit asks for. */
export function CentreStep({ model }: { model: RunModel }) {
  const { targetHip, moving } = useRunSnapshot(model);
  const { kit, setup } = model.variant;
  const name = targetHip === null ? 'the star' : model.nameOf(targetHip);
  return (
    <section aria-label="Centring" className="space-y-3">
      <p className="text-lg leading-snug">
        {moving ? 'Driving to ' : 'Looking for '}
        <strong className="font-semibold">{name}</strong>.
      </p>
      <p className="text-sm">{centringTask(moving)}</p>
      <dl className="grid grid-cols-[auto_1fr] gap-x-3 gap-y-1 text-sm">
        <dt className="text-soft">Eyepiece</dt>
        <dd>
          {kit.centringEyepiece.focalLengthMm} mm, shows{' '}
          {angleInWords(2 * model.lists.eyepieceRadiusArcmin)} of sky
        </dd>
        <dt className="text-soft">Last moves</dt>
        <dd>to the {approachInWords(setup.finalApproach)}</dd>
      </dl>
      <p className="text-sm text-soft">{arcminuteInWords}</p>
      <p className="text-sm text-soft">
        The faintest stars in the eyepiece are invented: they show how the tube moves.
      </p>
    </section>
  );
}
