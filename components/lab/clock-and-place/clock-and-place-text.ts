import type { ClockAndPlaceTemplate } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchText } from '../bench/bench-text';

export const clockAndPlaceText: BenchText<ClockAndPlaceTemplate> = {
  name: 'Clock and place',
  task: 'Tell the mount when and where',
  hint: 'Enter time and place from a card, and see what an hour or a wrong letter does to the sky.',
  whatItIs:
    'A card says where and when you are, the way people write such things. You enter it into the mount, and its sky is laid over the real one. A forgotten summer hour is 15°, a fist and a half. About 6 minutes.',
  lead: 'Every round has another card: other places, other ways to write a time, other traps.',
  outcomeTitle: 'What was entered, and how far off the mount’s sky is',
  keyLead:
    'Place, minute and way of writing differ from student to student. Rows of time that name the same moment in another way count as right.',
  templates: {
    'enter-the-card': {
      name: 'Enter the card',
      hint: 'A card with a twelve-hour clock, a date and a place: everything into an empty form.',
    },
    'check-the-form': {
      name: 'Check the form',
      hint: 'Somebody has filled in the form: find the two wrong rows and put them right.',
    },
    'dew-on-the-card': {
      name: 'Dew on the card',
      hint: 'The first slews went wrong and the card is half washed out: name the wrong row by where they landed.',
    },
    'night-of-the-change': {
      name: 'The night of the change',
      hint: 'Clocks go forward or back: a time that may not exist, or come twice. Ask, never guess.',
    },
    'far-from-home': {
      name: 'Far from home',
      hint: 'A southern or western place, and a watch that still shows home time.',
    },
    'by-the-needle': {
      name: 'By the needle',
      hint: 'Start towards true north with nothing but a compass and what it errs by.',
    },
  },
};
