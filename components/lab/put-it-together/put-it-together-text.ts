import type { PutItTogetherTemplate } from '@/lib/variants/bench/put-it-together-variant';
import type { BenchText } from '../bench/bench-text';

export const putItTogetherText: BenchText<PutItTogetherTemplate> = {
  name: 'Put it together',
  task: 'Put the telescope together',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
