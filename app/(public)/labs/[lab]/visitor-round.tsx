'use client';

import { BenchLab } from '@/components/lab/bench/bench-lab';
import type { BenchLabProps } from '@/components/lab/bench/bench-lab-props';
import type { AnyBenchVariant } from '@/lib/variants/bench/bench-labs';
import { RoundAfterwards } from '../round-afterwards';
import type { RoundLinks } from '../visitor-page';

/** A visitor's practice. What has been done is kept by this tab alone. */
export function VisitorRound({
  address,
  nextAddress,
  setUpAddress,
  ...lab
}: RoundLinks & Pick<BenchLabProps<AnyBenchVariant>, 'variant' | 'onSubmit'>) {
  return (
    <BenchLab
      key={address}
      {...lab}
      mode="practice"
      attemptKey={address}
      draft={null}
      afterwards={<RoundAfterwards {...{ nextAddress, setUpAddress }} next="Another round" />}
    />
  );
}
