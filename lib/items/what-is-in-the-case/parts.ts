import type { TubeType } from '../../optics/image-orientation';

/** A thing in the case: what it is for, what one misses without it, and which tubes have it. */
export type CasePart = {
  name: string;
  job: string;
  without: string;
  tubes: readonly TubeType[];
};

const all: readonly TubeType[] = ['refractor', 'reflector', 'maksutov-cassegrain'];

/** Common practice, no source. */
export const caseParts: readonly CasePart[] = [
  {
    name: 'the red dot finder',
    job: 'shows which way the tube points, over a wide piece of sky',
    without: 'the star is up there, but nobody brings it into the eyepiece',
    tubes: all,
  },
  {
    name: 'the focuser',
    job: 'moves the eyepiece in and out until stars are points',
    without: 'each star stays a fat disc and nothing makes it a point',
    tubes: all,
  },
  {
    name: 'the 25 mm eyepiece',
    job: 'shows a wide piece of sky, with little magnification',
    without: 'there is no eyepiece of low power to find things with',
    tubes: all,
  },
  {
    name: 'the dew shield',
    job: 'keeps stray light and dew away from the front glass',
    without: 'the front glass mists over after half an hour',
    tubes: ['refractor', 'maksutov-cassegrain'],
  },
  {
    name: 'the dust cap',
    job: 'covers the front whenever nobody observes, and always by day',
    without: 'dust settles in front, and by day sunlight could get in',
    tubes: all,
  },
  {
    name: 'the dovetail bar',
    job: 'is the rail on the tube by which the mount’s clamp holds it',
    without: 'the clamp has nothing to grip the tube by',
    tubes: all,
  },
  {
    name: 'the stop screw',
    job: 'keeps the tube from sliding out when the clamp gives way',
    without: 'a loose clamp would let the whole tube slide out',
    tubes: all,
  },
  {
    name: 'the mount',
    job: 'carries the tube and turns it along the horizon and up and down',
    without: 'the tube lies on the table and nothing turns it to a star',
    tubes: all,
  },
  {
    name: 'the tray',
    job: 'braces the three legs and holds eyepieces',
    without: 'the legs are not braced, and eyepieces have no place to lie',
    tubes: all,
  },
  {
    name: 'the erecting prism',
    job: 'sets a refractor’s picture the right way up and round',
    without: 'the refractor shows a tree upside down',
    tubes: ['refractor'],
  },
  {
    name: 'the star diagonal',
    job: 'turns the light of a Maksutov-Cassegrain upward, to a handy place',
    without: 'you must crouch behind the closed tube and look straight up along it',
    tubes: ['maksutov-cassegrain'],
  },
  {
    name: 'the small flat mirror',
    job: 'throws a reflector’s light out at the side of the tube',
    without: 'your head would have to hang in front of the open tube',
    tubes: ['reflector'],
  },
  {
    name: 'the hand control',
    job: 'tells the motors where to go, and which star is which',
    without: 'the motors have power, but nobody can steer them',
    tubes: all,
  },
];
