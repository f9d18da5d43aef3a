'use client';

import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { clockAndPlaceParts } from './clock-and-place-parts';
import { ClockAndPlaceResultView } from './clock-and-place-result';
import { clockAndPlaceText } from './clock-and-place-text';

/** "Clock and place" on its bench. */
export function ClockAndPlaceLab(props: BenchLabProps<ClockAndPlaceVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={clockAndPlaceParts}
      text={clockAndPlaceText}
      renderResult={(result) =>
        result.lab === 'clock-and-place' ? (
          <ClockAndPlaceResultView variant={props.variant} result={result} />
        ) : null
      }
    />
  );
}
