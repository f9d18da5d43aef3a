'use client';

import { RunLab } from '@/components/lab/run/run-lab';
import type { RunLabProps } from '@/components/lab/run/run-lab-props';
import { emptyRunDraft } from '@/lib/grading/run-submission';
import { RoundAfterwards } from '../round-afterwards';
import type { RoundLinks } from '../visitor-page';

/** A visitor's practice. What has been done is kept by this tab alone. */
export function VisitorRound({
  address,
  nextAddress,
  setUpAddress,
  ...lab
}: RoundLinks & Pick<RunLabProps, 'variant' | 'onSubmit'>) {
  return (
    <RunLab
      key={address}
      {...lab}
      mode="practice"
      attemptKey={address}
      draft={emptyRunDraft}
      afterwards={<RoundAfterwards nextAddress={nextAddress} setUpAddress={setUpAddress} />}
    />
  );
}
