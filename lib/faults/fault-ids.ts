/** Set-up faults. Names are the field's own. */
export const faultIds = [
  'summer-time',
  'time-zone',
  'date',
  'longitude-sign',
  'latitude',
  'swapped-stars',
  'wrong-star',
  'planet',
  'base-not-level',
  'tube-not-level-at-start',
  'compass-north',
  'finder-off',
  'backlash',
  'tube-slips',
  'clutch-unlocked',
  'tripod-bumped',
  'supply-reset',
  'wrong-final-approach',
  'cable-snag',
] as const;
export type FaultId = (typeof faultIds)[number];

/** What puts it right. Several faults may share a cure. */
export const cureIds = [
  'correct-summer-time',
  'correct-time-zone',
  'correct-date',
  'correct-longitude',
  'correct-latitude',
  'align-again-right-stars',
  'level-the-base',
  'level-the-tube-and-restart',
  'set-to-true-north',
  'set-the-finder',
  'finish-moves-the-right-way',
  'balance-and-tighten-the-tube',
  'lock-the-clutches-and-align-again',
  'stand-it-firm-and-align-again',
  'fresh-cells-and-align-again',
  'free-the-cable-and-align-again',
] as const;
export type CureId = (typeof cureIds)[number];
