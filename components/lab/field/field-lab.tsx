'use client';

import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { fieldParts } from './field-parts';
import { FieldResultView } from './field-result';
import { fieldText } from './field-text';

/** "Field" on its bench. */
export function FieldLab(props: BenchLabProps<FieldVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={fieldParts}
      text={fieldText}
      renderResult={(result) =>
        result.lab === 'field' ? <FieldResultView variant={props.variant} result={result} /> : null
      }
    />
  );
}
