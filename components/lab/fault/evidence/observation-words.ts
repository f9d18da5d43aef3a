import type { Observation } from '@/lib/faults/evidence';

/** What someone standing by would have told, in their own words. */
export const observationWords: Readonly<Record<Observation, string>> = {
  'tube-stood-level': 'When it was switched on, the tube stood level.',
  'tube-not-level': 'When it was switched on, the tube did not look level.',
  'bubble-in-the-ring': 'The bubble sat in its ring.',
  'bubble-off': 'The bubble touched the edge of its vial.',
  'set-by-compass': 'North was found with a compass needle.',
  'set-by-pole-star': 'North was taken from the pole of the sky, not from a compass.',
  'dot-agrees-with-eyepiece': 'What the dot covered stood in the middle of the eyepiece.',
  'dot-beside-the-star-in-eyepiece':
    'With the star in the middle of the eyepiece, the dot stood beside it.',
  'clutches-firm': 'Both clutches were firm: the tube would not turn by hand.',
  'clutch-loose': 'The tube could be turned by hand, with hardly a finger.',
  'tripod-was-touched': 'Someone stumbled against the tripod in the dark.',
  'tripod-untouched': 'Nobody came near the tripod.',
  'lamp-dimmed-while-slewing':
    'The little lamp on the mount went dim whenever the motors ran fast.',
  'lamp-steady': 'The little lamp on the mount shone steadily.',
  'last-moves-right-and-up':
    'Each star was brought to the middle with last moves to the right and up.',
  'last-moves-any-way': 'Stars were brought to the middle from whichever side was handy.',
  'cable-free': 'The cable hung free all round.',
  'cable-taut': 'The cable had wound itself round a leg and was taut.',
};
