'use client';

import { PairLab } from '@/components/lab/pair/pair-lab';
import type { PairLabProps } from '@/components/lab/pair/pair-lab-props';
import { emptyPairDraft } from '@/lib/grading/pair-submission';
import { RoundAfterwards } from '../round-afterwards';
import type { RoundLinks } from '../visitor-page';

/** A visitor's practice. What has been done is kept by this tab alone. */
export function VisitorRound({
  address,
  nextAddress,
  setUpAddress,
  ...lab
}: RoundLinks & Pick<PairLabProps, 'sky' | 'onSubmit'>) {
  return (
    <PairLab
      key={address}
      {...lab}
      mode="practice"
      attemptKey={address}
      draft={emptyPairDraft}
      afterwards={<RoundAfterwards nextAddress={nextAddress} setUpAddress={setUpAddress} />}
    />
  );
}
