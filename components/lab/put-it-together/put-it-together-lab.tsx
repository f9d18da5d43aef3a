'use client';

import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { putItTogetherParts } from './put-it-together-parts';
import { PutItTogetherResultView } from './put-it-together-result';
import { putItTogetherText } from './put-it-together-text';

/** "Put it together" on its bench. */
export function PutItTogetherLab(props: BenchLabProps<PutItTogetherVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={putItTogetherParts}
      text={putItTogetherText}
      renderResult={(result) =>
        result.lab === 'put-it-together' ? (
          <PutItTogetherResultView variant={props.variant} result={result} />
        ) : null
      }
    />
  );
}
