import type { BalanceTemplate } from '@/lib/variants/bench/balance-variant';
import type { BenchText } from '../bench/bench-text';

export const balanceText: BenchText<BalanceTemplate> = {
  name: 'Balance',
  task: 'Balance the tube',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
