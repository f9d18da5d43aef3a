import type { ClockAndPlaceTemplate } from '@/lib/variants/bench/clock-and-place-variant';
import type { BenchText } from '../bench/bench-text';

export const clockAndPlaceText: BenchText<ClockAndPlaceTemplate> = {
  name: 'Clock and place',
  task: 'Tell it clock and place',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
