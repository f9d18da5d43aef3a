import type { CureId, FaultId } from '../../faults/fault-ids';

/** What happened, as somebody would tell it afterwards. */
export const happened: Readonly<Record<FaultId, string>> = {
  'summer-time': 'Summer time was ticked wrongly',
  'time-zone': 'The time zone was another one',
  date: 'The date was wrong',
  'longitude-sign': 'East was entered for west, or west for east',
  latitude: 'The latitude was wrong',
  'swapped-stars': 'Each star was confirmed under the other’s name',
  'wrong-star': 'A neighbour was centred for one of the stars',
  planet: 'A planet was centred for one of the stars',
  'base-not-level': 'The base leaned from the start',
  'tube-not-level-at-start': 'The tube was not level at the start',
  'compass-north': 'The tube was set to north by the needle',
  'finder-off': 'Stars were confirmed under a dot that was off',
  backlash: 'Stars were reached now from one side, now from the other',
  'tube-slips': 'The tube crept in its clamp',
  'clutch-unlocked': 'A clutch was left open',
  'tripod-bumped': 'A leg of the tripod was kicked',
  'supply-reset': 'The supply sagged, and the computer began afresh',
  'wrong-final-approach': 'All last moves went the wrong way',
  'cable-snag': 'A cable caught on a leg and held the mount back',
};

/** What puts it right, and what else to mind. */
export const cureText: Readonly<Record<CureId, string>> = {
  'correct-summer-time': 'Correct the summer-time entry',
  'correct-time-zone': 'Correct the time zone',
  'correct-date': 'Correct the date',
  'correct-longitude': 'Correct the longitude',
  'correct-latitude': 'Correct the latitude',
  'align-again-right-stars': 'Align again, and make sure of each star',
  'level-the-base': 'Level the base and start again',
  'level-the-tube-and-restart': 'Lay the tube level and start again',
  'set-to-true-north': 'Set the tube to true north',
  'set-the-finder': 'Set the finder on something far away',
  'finish-moves-the-right-way': 'End each centring right and up',
  'balance-and-tighten-the-tube': 'Balance the tube, tighten, align again',
  'lock-the-clutches-and-align-again': 'Lock both clutches and align again',
  'stand-it-firm-and-align-again': 'Stand the tripod firm and align again',
  'fresh-cells-and-align-again': 'Put in fresh cells and align again',
  'free-the-cable-and-align-again': 'Free the cable and align again',
};

/** Why that cure and no other. */
export const cureReason: Readonly<Record<CureId, string>> = {
  'correct-summer-time': 'An hour of the clock turns the sky by 15°.',
  'correct-time-zone': 'Each hour of the zone turns the sky by 15°.',
  'correct-date': 'Each day turns the sky by about 1°.',
  'correct-longitude': 'The wrong side of Greenwich turns the sky by twice the longitude.',
  'correct-latitude': 'It tips the whole sky between north and south.',
  'align-again-right-stars':
    'The mount was told a wrong name; only a new alignment takes that back.',
  'level-the-base': 'The lean itself must go; it shows in the first slews.',
  'level-the-tube-and-restart': 'The altitude is counted from where the tube lay at the start.',
  'set-to-true-north': 'The needle points beside true north by the declination of the place.',
  'set-the-finder': 'Set on something near, dot and tube part again farther out.',
  'finish-moves-the-right-way': 'Then the play lies on the same side each time.',
  'balance-and-tighten-the-tube': 'A tube out of balance creeps again after any alignment.',
  'lock-the-clutches-and-align-again':
    'With a clutch open the readings do not tell where the tube is.',
  'stand-it-firm-and-align-again': 'The mount cannot feel that it was moved: it must be told anew.',
  'fresh-cells-and-align-again':
    'The computer has forgotten everything, and would forget it again.',
  'free-the-cable-and-align-again':
    'Caught again, the cable would spoil the next alignment as well.',
};
