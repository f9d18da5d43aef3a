import type { BalanceTemplate } from '@/lib/variants/bench/balance/balance-variant';
import type { BenchText } from '../bench/bench-text';

export const balanceText: BenchText<BalanceTemplate> = {
  name: 'Balance',
  task: 'Balance the tube',
  hint: 'Slide a tube in its clamp until it stays where it is put, low and high.',
  whatItIs:
    'A telescope lies in its clamp with everything on it that is used tonight. You hold it, slide it, let go, and see which end sinks. A tube that creeps spoils every alignment after it. About 8 minutes.',
  lead: 'Every round has a tube of other weights, on another bar. Pick the telescope you know, or one you do not.',
  outcomeTitle: 'Where the tube was clamped, and whether it holds',
  keyLead:
    'Weights, places and the clutch differ from student to student, and so does the place that holds. Other places and parts count too, as long as the clutch holds the tube over the whole range.',
  templates: {
    'first-balance': {
      name: 'A tube to balance',
      hint: 'Say which end is heavy, then slide it until it holds at every altitude.',
    },
    'phone-joins': {
      name: 'A phone joins',
      hint: 'Foresee what a phone on the eyepiece does, work out the new balance point, and set it.',
    },
    'short-bar': {
      name: 'The bar is too short',
      hint: 'Sliding alone is not enough: a weight has to go on, at the right end.',
    },
    raised: {
      name: 'Level is not enough',
      hint: 'It balances level and creeps when raised: find the place that holds over the whole range.',
    },
    'two-edges': {
      name: 'A tube of unknown weight',
      hint: 'Find the balance point by trying where either end begins to sink.',
    },
  },
};
