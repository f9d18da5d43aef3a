import type { FinderTemplate } from '@/lib/variants/bench/finder/finder-variant';
import type { BenchText } from '../bench/bench-text';

export const finderText: BenchText<FinderTemplate> = {
  name: 'Finder',
  task: 'Set the finder',
  hint: 'Make the red dot and the eyepiece point to the same place.',
  whatItIs:
    'A finder is set on something far away, by day and well clear of the Sun, or on a light at dusk. You choose what to set it on, centre it in the eyepiece and turn two screws until the dot sits on it. How near the thing was comes back under the stars. About ten minutes.',
  lead: 'Things, distances, Sun and evening lights are those of the place and date you choose; the finder starts out wherever the last owner left it.',
  outcomeTitle: 'What the finder was set on, and what is left of it on the sky',
  keyLead:
    'Each student has a scene of their own: other things at other distances, the Sun at its true place for the moment, a finder that starts elsewhere and screws that turn another way. Below is one careful way through each.',
  templates: {
    'free-target': {
      name: 'Choose a target by day',
      hint: 'Things from a fence to a mast, some of them too near to the Sun: choose, set, lock, cap.',
    },
    'far-ones-by-the-sun': {
      name: 'The far ones stand by the Sun',
      hint: 'Take something at middle distance, or keep the caps on and wait for dusk.',
    },
    'day-then-dusk': {
      name: 'Roughly by day, finely at dusk',
      hint: 'Only near things will do by day; at dusk it is set again on the Moon or a star.',
    },
    'near-then-predict': {
      name: 'Set on something near, then foretell',
      hint: 'The target is given and too near. Where will a star sit in the eyepiece?',
    },
    'set-by-another': {
      name: 'Somebody else has set it',
      hint: 'At dusk: find out how far off it is and what it was set on, and put it right.',
    },
  },
};
