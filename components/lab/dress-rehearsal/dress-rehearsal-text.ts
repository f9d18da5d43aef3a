import type { DressRehearsalTemplate } from '@/lib/variants/bench/dress-rehearsal-variant';
import type { BenchText } from '../bench/bench-text';

export const dressRehearsalText: BenchText<DressRehearsalTemplate> = {
  name: 'Dress rehearsal',
  task: 'The whole evening',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
