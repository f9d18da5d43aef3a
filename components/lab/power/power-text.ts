import type { PowerTemplate } from '@/lib/variants/bench/power-variant';
import type { BenchText } from '../bench/bench-text';

export const powerText: BenchText<PowerTemplate> = {
  name: 'Power',
  task: 'Power it safely',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
