import type { FinderTemplate } from '@/lib/variants/bench/finder-variant';
import type { BenchText } from '../bench/bench-text';

export const finderText: BenchText<FinderTemplate> = {
  name: 'Finder',
  task: 'Set the finder',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
