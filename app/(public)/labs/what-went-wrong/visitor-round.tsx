'use client';

import { FaultLab } from '@/components/lab/fault/fault-lab';
import type { FaultLabProps } from '@/components/lab/fault/fault-lab-props';
import { emptyFaultDraft } from '@/lib/grading/fault-submission';
import { RoundAfterwards } from '../round-afterwards';
import type { RoundLinks } from '../visitor-page';

/** A visitor's practice. What has been done is kept by this tab alone. */
export function VisitorRound({
  address,
  nextAddress,
  setUpAddress,
  ...lab
}: RoundLinks & Pick<FaultLabProps, 'variant' | 'onSubmit' | 'onLook'>) {
  return (
    <FaultLab
      key={address}
      {...lab}
      mode="practice"
      attemptKey={address}
      draft={emptyFaultDraft}
      afterwards={<RoundAfterwards nextAddress={nextAddress} setUpAddress={setUpAddress} />}
    />
  );
}
