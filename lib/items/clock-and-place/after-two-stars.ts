import type { MisconceptionId } from '../misconceptions';

type Claim = { text: string; reason: string; misconception?: MisconceptionId };

/** How an evening may have come so far. */
export const afterTwoStars: readonly string[] = [
  'two good stars have been centred with care, and the mount took them.',
  'the alignment on Vega and Capella is done, and both were centred well.',
  'the mount has been aligned on two stars, eight fists apart.',
  'two stars in different directions have been confirmed, and no third one is off.',
  'the class has aligned on a star in the east and one in the west.',
];

/** What a two-star alignment takes up, for the way to a star (design: "Which slip bites where"). */
export const goneAfterTwoStars: readonly Claim[] = [
  {
    text: 'The clock is some minutes ahead',
    reason: 'A wrong clock turns the sky, and the alignment turned it back.',
  },
  {
    text: 'The clock is some minutes behind',
    reason: 'A wrong clock turns the sky, and the alignment turned it back.',
  },
  {
    text: 'The date is a day or two out',
    reason: 'A day is a turn of 1°, and the alignment took it up.',
  },
  {
    text: 'The longitude is a few degrees out',
    reason: 'A wrong longitude is a turn too, and the alignment took it up.',
  },
  {
    text: 'The latitude is a degree out',
    reason: 'A wrong latitude tips the sky, and the alignment tipped it back.',
  },
  {
    text: 'The start was by compass, not by true north',
    reason: 'That is a turn about the zenith, and the alignment took it up.',
  },
  {
    text: 'The base leans by half a degree',
    reason: 'The alignment finds out how the base leans.',
  },
];

/** What it does not take up. */
export const leftAfterTwoStars: readonly Claim[] = [
  {
    text: 'The tripod has been kicked since',
    reason: 'what happens after the alignment is an error that nobody takes out.',
    misconception: 'alignment-cures-all',
  },
  {
    text: 'One leg has been sinking since',
    reason: 'the base leans more and more, and the mount does not know of it.',
    misconception: 'alignment-cures-all',
  },
  {
    text: 'The tube has slipped in its clamp since',
    reason: 'its readings are untrue from then on.',
    misconception: 'alignment-cures-all',
  },
  {
    text: 'Somebody has pushed the tube by hand since',
    reason: 'the mount counts its motors, not the hand.',
    misconception: 'alignment-cures-all',
  },
  {
    text: 'The supply dropped out for a moment since',
    reason: 'then the alignment is lost, and has to be done again.',
    misconception: 'alignment-cures-all',
  },
  {
    text: 'One of the two was really its neighbour',
    reason: 'a wrong star puts the whole sky wrong. Check on a third star.',
    misconception: 'alignment-cures-all',
  },
];
