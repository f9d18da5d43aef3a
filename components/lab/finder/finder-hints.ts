import type { FinderDraft } from '@/lib/grading/bench/finder/finder-submission';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { stateOf } from './finder-work';

const setting = [
  'Turn the tube to it with the caps on. Then caps off, the wide view first; centre it, change to the narrow one, centre it again.',
  'Leave the tube where it is and turn the screws. Turn one a little and see which way the dot goes; then the other. They are not quite square, so go to and fro between them.',
];

/** Up to three hints, each telling more, for where one is. */
export function finderHints(variant: FinderVariant, draft: FinderDraft): readonly string[] {
  const state = stateOf(variant, draft);
  if (variant.template === 'set-by-another' && state.turns[0] === 0 && state.turns[1] === 0) {
    return [
      'First leave the screws alone: move the tube until the light is under the dot, and look where it is in the eyepiece.',
      'If it is not in the eyepiece at all, centre it there instead: the dot is then as far from it in the finder.',
      'Finder beside the tube, over distance: 80 mm at 8 m is 0.01, and that is 34′. Twice as far, half as much.',
    ];
  }
  if (state.dusk) return setting;
  const [first = '', second = ''] = setting;
  switch (variant.template) {
    case 'free-target':
    case 'far-ones-by-the-sun':
      return [
        'The farther, the better: finder and tube point side by side, and cross where it was set. But only what is more than 30° from the Sun, with an adult beside you and in a building’s shadow.',
        first,
        second,
      ];
    case 'near-then-predict':
      return [
        second,
        'How far: the finder’s distance from the tube over the distance of the thing. One part in a thousand is 3.4′.',
        'Which way: beyond the thing the two lines have crossed, so the dot points to the other side of the tube from where the finder sits, and so does the star in the sky. Then turn that as the eyepiece turns it.',
      ];
    default:
      return [
        'By day take the farthest thing that is clear of the Sun. It will not be good enough; that is what dusk is for.',
        first,
        second,
      ];
  }
}
