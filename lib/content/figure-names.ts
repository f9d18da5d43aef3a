import type { LessonSlug } from '../course/lessons';

/** Every figure that a lesson can show, by the lesson whose own it is; any lesson may show any of them. */
export const figureNamesOf = {
  'what-is-in-the-case': ['light-through-the-tube', 'width-and-light'],
  'standing-it-up': ['what-rests-on-what', 'foot-triangle', 'closing-legs'],
  'level-enough': ['three-legs-one-bubble', 'vial-half-turn', 'cost-of-a-lean'],
  'tube-on-and-balanced': ['tube-in-its-clamp', 'pull-while-raised'],
  'eyepieces-and-views': ['sky-in-the-eyepiece', 'which-way-round'],
  'finder-by-day': ['two-lines-of-sight', 'dot-and-screws'],
  'power-without-smoke': ['plate-and-label', 'row-of-cells', 'cells-in-the-cold'],
  'clock-and-place': ['turning-sky', 'wrong-clock', 'needle-and-north'],
  'choosing-alignment-stars': ['fists-up', 'separation-and-hit-rate', 'altitude-limits'],
  'align-on-two-stars': ['centring-and-play', 'agree-and-third'],
  'what-went-wrong': ['fault-patterns', 'two-suspects'],
  'the-night': ['from-sunset-to-dark', 'eyes-in-the-dark', 'dew-on-glass', 'packing-up'],
} as const satisfies Record<LessonSlug, readonly string[]>;
export type FigureNameOf<S extends LessonSlug> = (typeof figureNamesOf)[S][number];
export type FigureName = FigureNameOf<LessonSlug>;
export const figureNames: readonly FigureName[] = Object.values(figureNamesOf).flat();
