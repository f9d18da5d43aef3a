'use client';

import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { finderParts } from './finder-parts';
import { FinderResultView } from './finder-result';
import { finderText } from './finder-text';

/** "Finder" on its bench. */
export function FinderLab(props: BenchLabProps<FinderVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={finderParts}
      text={finderText}
      renderResult={(result) =>
        result.lab === 'finder' ? (
          <FinderResultView variant={props.variant} result={result} />
        ) : null
      }
    />
  );
}
