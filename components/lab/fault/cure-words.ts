import type { CureId } from '@/lib/faults/fault-ids';

export type CureWords = {
  name: string;
  line: string;
  /** What can hurt people or telescopes on the way. */
  caution?: string;
};

const cellsCaution =
  'Cells all of one kind and age, the right way round; primary cells are never charged. A mains adapter is the teacher’s: dry, and on a protected socket.';

/** What puts it right, as it is said at the telescope. */
export const cureWords: Readonly<Record<CureId, CureWords>> = {
  'correct-summer-time': {
    name: 'Correct the summer-time entry',
    line: 'Then slew to the first star again.',
  },
  'correct-time-zone': {
    name: 'Correct the time zone',
    line: 'Enter the hours ahead of UTC that hold for this place.',
  },
  'correct-date': {
    name: 'Correct the date',
    line: 'Read it back aloud: day, month, year.',
  },
  'correct-longitude': {
    name: 'Correct the longitude',
    line: 'East or west of Greenwich, then the degrees.',
  },
  'correct-latitude': {
    name: 'Correct the latitude',
    line: 'Take it from a map of this place.',
  },
  'align-again-right-stars': {
    name: 'Align again on the right stars',
    line: 'Check each one by its neighbours before you confirm it.',
  },
  'level-the-base': {
    name: 'Level the base and start again',
    line: 'Turn the leg that lies in the bubble’s own direction first.',
    caution:
      'Hold the mount while a leg lock is open, with a second person at a heavy one, and keep fingers clear of the legs.',
  },
  'level-the-tube-and-restart': {
    name: 'Set the tube level and start again',
    line: 'Lay the level on the tube before switching on.',
  },
  'set-to-true-north': {
    name: 'Set the tube to true north',
    line: 'Add the declination to the needle, or go by the pole of the sky.',
  },
  'set-the-finder': {
    name: 'Set the finder on something far away',
    line: 'Centre it in the eyepiece, then bring the dot onto it with the two adjusters.',
    caution:
      'Do it on a star after dark. By day it is an adult’s job, well away from the Sun and in the shadow of a building: one look at the Sun blinds.',
  },
  'finish-moves-the-right-way': {
    name: 'End every centring in the final approach direction',
    line: 'The last moves go the way in which this mount ends its slews. Then confirm.',
  },
  'balance-and-tighten-the-tube': {
    name: 'Balance the tube, tighten it, align again',
    line: 'It should stay where it is put.',
    caution: 'Hold the tube before you loosen its clamp: it can slide out.',
  },
  'lock-the-clutches-and-align-again': {
    name: 'Lock both clutches and align again',
    line: 'From then on the tube is moved by its motors only.',
  },
  'stand-it-firm-and-align-again': {
    name: 'Stand the tripod firm and align again',
    line: 'Press the feet into the ground, mark the legs, and keep people a step away.',
    caution:
      'Lift and move it with two people, fingers clear of folding legs; something white on each leg keeps the next foot off.',
  },
  'fresh-cells-and-align-again': {
    name: 'Fresh cells, then align again',
    line: 'Switch off before you change them.',
    caution: cellsCaution,
  },
  'free-the-cable-and-align-again': {
    name: 'Free the cable and align again',
    line: 'It should hang free for a full turn both ways.',
    caution: 'Switch off first. A cable on dark ground trips people: mark it.',
  },
};
