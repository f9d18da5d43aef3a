'use client';

import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { balanceParts } from './balance-parts';
import { BalanceResultView } from './balance-result';
import { balanceText } from './balance-text';

/** "Balance" on its bench. */
export function BalanceLab(props: BenchLabProps<BalanceVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={balanceParts}
      text={balanceText}
      renderResult={(result) =>
        result.lab === 'balance' ? (
          <BalanceResultView variant={props.variant} result={result} />
        ) : null
      }
    />
  );
}
