import type { RunStage } from '@/lib/alignment/run-state';

/** Hints for the step one is at, each telling more. They speak of the kit, never of where a star is. */
export function runHints(
  stage: RunStage,
  kit: { orientation: 'true' | 'mirrored' | 'turned'; approach: string },
): readonly string[] {
  switch (stage) {
    case 'start-position':
      return [
        'The needle shows magnetic north. True north lies a little to one side of it: the box above says how far.',
        'Where the needle points east of true north, true north is to the left of the needle; west of it, to the right.',
        'The bubble goes to the higher end of the tube.',
      ];
    case 'choose-first':
    case 'choose-second':
      return [
        'Take a bright star that stands alone, neither low nor almost straight up.',
        'The two stars should lie in quite different directions: about nine fists apart is best.',
        'In the sky, pick a light to see how high it stands. A planet shines steadily and is in no list of stars.',
      ];
    case 'centre-first':
    case 'centre-second':
      return [
        'Look up first. The red dot shows roughly where the tube points: bring it to the star with the fast steps.',
        'A star that is a wide disc is out of focus: turn the knob until it is a point.',
        `${orientationHint[kit.orientation]} Come to the middle with your last moves to the ${kit.approach}: then the play of the gears is taken up.`,
      ];
    case 'result':
    case 'check-third':
      return [
        'A third star far from both tells what two cannot.',
        'If it is in the eyepiece, most targets will be. If it is not, something was wrong.',
      ];
    case 'judged':
      return [];
  }
}

const orientationHint = {
  true: 'This tube shows the sky as it is: when the tube goes right, the star goes left.',
  mirrored:
    'This tube shows right and left exchanged: when the tube goes right, the star goes right; up and down are as they are.',
  turned:
    'This tube shows the sky turned upside down: when the tube goes right, the star goes right, and when it goes up, the star goes up.',
} as const;
