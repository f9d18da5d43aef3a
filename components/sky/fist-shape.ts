/**
 * A closed fist held out at arm's length, in a square of 100 units that it fills from side to side:
 * four curled fingers above, the thumb across below. It spans about 10° (common practice, no
 * source). SVG path data, for the scene and for the panel's drawing alike.
 */
export const fistOutline =
  'M2 24 C2 10 25 8 26 20 C27 2 49 0 50.5 14 C52 1 74 3 74.5 18 C76 8 98 12 98 28 L98 66 ' +
  'C97 88 88 99 66 99 L36 99 C14 99 3 88 3 68 Z';

/** Between the fingers, and the thumb lying over their tips. */
export const fistFolds =
  'M26 20 L26 54 M50.5 14 L50.5 56 M74.5 18 L74.5 60 ' +
  'M3 62 C10 52 24 54 40 57 C54 59 68 60 72 66 C76 73 70 80 60 80 C44 81 28 78 14 84 ' +
  'M73 68 C84 70 92 66 98 58';
