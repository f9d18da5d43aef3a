import type { FieldTemplate } from '@/lib/variants/bench/field-variant';
import type { BenchText } from '../bench/bench-text';

export const fieldText: BenchText<FieldTemplate> = {
  name: 'Field',
  task: 'Choose eyepiece and field',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
