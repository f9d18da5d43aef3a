'use client';

import type { PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { powerParts } from './power-parts';
import { PowerResultView } from './power-result';
import { powerText } from './power-text';

/** "Power" on its bench. */
export function PowerLab(props: BenchLabProps<PowerVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={powerParts}
      text={powerText}
      renderResult={(result) =>
        result.lab === 'power' ? <PowerResultView variant={props.variant} result={result} /> : null
      }
    />
  );
}
