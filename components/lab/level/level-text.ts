import type { LevelTemplate } from '@/lib/variants/bench/level-variant';
import type { BenchText } from '../bench/bench-text';

export const levelText: BenchText<LevelTemplate> = {
  name: 'Level',
  task: 'Level the tripod',
  hint: '',
  whatItIs: '',
  lead: '',
  outcomeTitle: '',
  keyLead: '',
  templates: { plain: { name: 'Plain', hint: '' } },
};
