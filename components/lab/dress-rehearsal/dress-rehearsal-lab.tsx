'use client';

import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { dressRehearsalParts } from './dress-rehearsal-parts';
import { DressRehearsalResultView } from './dress-rehearsal-result';
import { dressRehearsalText } from './dress-rehearsal-text';

/** "Dress rehearsal" on its bench. */
export function DressRehearsalLab(props: BenchLabProps<DressRehearsalVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={dressRehearsalParts}
      text={dressRehearsalText}
      renderResult={(result) =>
        result.lab === 'dress-rehearsal' ? (
          <DressRehearsalResultView variant={props.variant} result={result} />
        ) : null
      }
    />
  );
}
