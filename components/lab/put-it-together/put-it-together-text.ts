import type { PutItTogetherTemplate } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchText } from '../bench/bench-text';

export const putItTogetherText: BenchText<PutItTogetherTemplate> = {
  name: 'Put it together',
  task: 'Put the telescope together',
  hint: 'Legs, tray, mount, tube and what goes on it: in an order that nobody gets hurt by.',
  whatItIs:
    'Put one of three telescopes together from its case, step by step, and spot what could hurt somebody on the way. Any order is right in which nothing rests on what is not there yet. About eight minutes a round.',
  lead: 'A telescope is set up in the dark by cold fingers. Whoever knows which step rests on which never drops a tube.',
  outcomeTitle: 'In which order it was put together, and what was seen of danger',
  keyLead:
    'Each student gets a telescope’s parts in a drawn order, with parts that do not belong to it, and three looks round of their own. Below is one of each kind with a model answer; other orders are right too.',
  templates: {
    'from-the-case': { name: 'From the case', hint: 'Everything, from folded legs to open caps.' },
    'half-built': {
      name: 'Half built',
      hint: 'Somebody began and left one thing out, which is to be put right first.',
    },
    'mixed-case': {
      name: 'Three telescopes in one case',
      hint: 'The stand is up; only some of the parts belong to this tube.',
    },
    'by-day': { name: 'By day', hint: 'The Sun is up: the same work, with the caps on.' },
    'take-down': { name: 'Taken down', hint: 'All of it back into the case.' },
  },
};
