import type { FaultId } from '@/lib/faults/fault-ids';
import type { Look } from '@/lib/variants/fault-variant';

export type FaultWords = {
  name: string;
  /** What is wrong, for the list to choose from. */
  line: string;
  /** How it shows, and what the two stars make of it. */
  shows: string;
  /** Where it is best seen, the most telling first. */
  seenIn: readonly Look[];
  /** What many believe of it, and what is so. */
  misconception?: string;
};

/**
 * The faults in the field's own words. What each does to the first slews and to a fit is from the
 * table "Which slip bites where" of the design; the amounts of a learner's own evening are computed.
 */
export const faultWords: Readonly<Record<FaultId, FaultWords>> = {
  'summer-time': {
    name: 'The summer-time hour',
    line: 'Summer time was ticked when it is not in force, or left out when it is.',
    shows:
      'The mount believes in a sky one hour early or late. In an hour the sky turns 15° about the pole, so the first slews miss by up to that much, and by less near the pole.',
    seenIn: ['card', 'first', 'second'],
    misconception:
      'Two stars can turn the whole sky back, but then the mount seems to lean. And the Moon, the planets and rising times stay wrong.',
  },
  'time-zone': {
    name: 'The time zone',
    line: 'The hours ahead of or behind UTC belong to another zone.',
    shows:
      'The whole sky is turned about the pole by 15° for every hour, so one slew may even end below the horizon.',
    seenIn: ['card', 'first', 'second'],
    misconception:
      'The zone and summer time are two entries: an hour too many in one and too few in the other cancel out.',
  },
  date: {
    name: 'The date',
    line: 'The day, the month or the year is wrong; often day and month are exchanged.',
    shows:
      'The stars come round about 4 minutes earlier each day. One day off turns the sky by 1°, a month by 30°.',
    seenIn: ['card', 'first', 'second'],
    misconception: 'The same stars do not stand in the same places all year at the same hour.',
  },
  'longitude-sign': {
    name: 'East taken for west',
    line: 'The longitude was entered on the wrong side of Greenwich.',
    shows:
      'The place is believed to lie twice its longitude away, and the sky is turned about the pole by just as much.',
    seenIn: ['card', 'first', 'second'],
  },
  latitude: {
    name: 'The latitude',
    line: 'The place was entered too far north or too far south.',
    shows:
      'The sky is believed to be tipped about the line from east to west. Stars in the south and north are missed in height, and the other way round in the north than in the south; stars due east and west hardly in height.',
    seenIn: ['card', 'first', 'second'],
  },
  'swapped-stars': {
    name: 'Two stars swapped',
    line: 'Each of the two was confirmed under the other one’s name.',
    shows:
      'The angle from one to the other is right, whichever is called first. But the base would have to lie on its side to see them so.',
    seenIn: ['outcome', 'later'],
    misconception:
      'A perfect angle between two stars is no proof: look at how the base would stand.',
  },
  'wrong-star': {
    name: 'A wrong star',
    line: 'One of the stars that were centred is another than the one named.',
    shows:
      'The first slews miss by little. But the angle between what was centred is not the angle between the two stars named, or it fits only with a zero that no telescope has.',
    seenIn: ['outcome', 'later', 'first'],
    misconception:
      'The brightest light in the finder need not be the star: see which one stands where the slew ended.',
  },
  planet: {
    name: 'A planet taken for a star',
    line: 'One of the two lights was a planet near the star.',
    shows:
      'The same as a wrong star: the angle does not fit, or fits only with a zero that no telescope has. A bright planet stands near one of the two.',
    seenIn: ['outcome', 'later', 'first'],
    misconception:
      'The brightest light is seldom the star you want: planets outshine most stars, and do not twinkle.',
  },
  'base-not-level': {
    name: 'The base off level',
    line: 'The tripod’s head leans, so the whole mount leans with it.',
    shows:
      'The slews are high on one side of the sky, low on the opposite side, and drawn sideways in between. The alignment finds the lean.',
    seenIn: ['observations', 'outcome', 'first', 'second'],
    misconception:
      'A base 1° off level is absorbed by a two-star alignment: less than a thousandth of an arcminute is left. It spoils the first slews only.',
  },
  'tube-not-level-at-start': {
    name: 'The tube not level at the start',
    line: 'The tube pointed a little up or down when the mount was told that it lay level.',
    shows:
      'Every slew is too high, or every one too low, by the same amount all round the sky, and none to the side.',
    seenIn: ['observations', 'first', 'second'],
    misconception:
      'A mount that solves for the altitude zero finds a few degrees of this by itself. One that takes the zero as given tips its whole sky.',
  },
  'compass-north': {
    name: 'Compass north for true north',
    line: 'The tube was set to north by the needle, which points beside true north.',
    shows:
      'Every slew is turned to the same side by the declination of the place. On the sky that is less the higher the star stands. The heights are right.',
    seenIn: ['observations', 'first', 'second'],
    misconception:
      'A start beside north is absorbed by a two-star alignment. It only makes the first star harder to find.',
  },
  'finder-off': {
    name: 'The finder out of line',
    line: 'The dot and the eyepiece look at different places.',
    shows:
      'Whatever the dot covers stands beside the middle of the eyepiece, always by the same amount. If stars were confirmed by the dot, every later go-to is off by about as much.',
    seenIn: ['observations', 'later'],
    misconception:
      'A finder set on a fence nearby is not set for the sky: the tube and the finder stand side by side.',
  },
  backlash: {
    name: 'Play in the gears',
    line: 'Slack that is taken up whenever a motor turns back crept into the readings.',
    shows:
      'The misses are small, arcminutes and not degrees, and depend on the side from which a star was reached.',
    seenIn: ['observations', 'later', 'outcome'],
    misconception:
      'Play cannot be trained away. It does no harm when every star is reached from the same side.',
  },
  'tube-slips': {
    name: 'The tube creeps',
    line: 'Out of balance or loose in its clamp, the tube sinks while the readings stand still.',
    shows:
      'Two stars disagree, or agree only with a zero and a lean that nobody gave the telescope. What comes after the slip is off by about as much in height.',
    seenIn: ['later', 'outcome', 'observations'],
  },
  'clutch-unlocked': {
    name: 'A clutch left open',
    line: 'An axis could turn without its motor, so the readings no longer tell where the tube is.',
    shows:
      'The readings are untrue by as much as the axis turned by hand or wind. The two stars then disagree, or agree with a zero and a lean that nobody gave the telescope.',
    seenIn: ['observations', 'outcome', 'later'],
    misconception:
      'Pushing the tube by hand to help it along does not help: the mount does not see it.',
  },
  'tripod-bumped': {
    name: 'The tripod was bumped',
    line: 'A leg was kicked or sank into soft ground after a star had been confirmed.',
    shows:
      'What was right before is off from then on, by another amount in each part of the sky. Nothing in the mount can notice it.',
    seenIn: ['observations', 'later', 'outcome'],
  },
  'supply-reset': {
    name: 'The supply gave out',
    line: 'The voltage sagged while the motors ran fast, and the computer started afresh.',
    shows:
      'From one moment to the next everything is forgotten, even where the tube stood: the slews after it end anywhere.',
    seenIn: ['observations', 'later'],
    misconception:
      'Cells that light a lamp may still be too weak for two motors: voltage falls when current is drawn.',
  },
  'wrong-final-approach': {
    name: 'Last moves from the wrong side',
    line: 'Each star was brought to the middle against the direction in which this mount ends its slews.',
    shows:
      'The two stars agree, but every go-to ends from the other side and misses by the play of the gears, arcminutes and not degrees, and much the same way.',
    seenIn: ['observations', 'later', 'outcome'],
  },
  'cable-snag': {
    name: 'A cable held it back',
    line: 'A cable wound itself round the mount and pulled at the tube.',
    shows:
      'The miss appears after a long turn to one side. It is mostly sideways, and what was right before it is off.',
    seenIn: ['observations', 'later', 'second'],
  },
};

/** The list to choose from, in the order in which an evening goes. */
export const faultGroups: readonly { title: string; faults: readonly FaultId[] }[] = [
  {
    title: 'What was entered',
    faults: ['summer-time', 'time-zone', 'date', 'longitude-sign', 'latitude'],
  },
  {
    title: 'How it was set up',
    faults: ['base-not-level', 'tube-not-level-at-start', 'compass-north', 'finder-off'],
  },
  {
    title: 'Which stars, and how they were centred',
    faults: ['swapped-stars', 'wrong-star', 'planet', 'backlash', 'wrong-final-approach'],
  },
  {
    title: 'What moved or failed',
    faults: ['tube-slips', 'clutch-unlocked', 'tripod-bumped', 'supply-reset', 'cable-snag'],
  },
];
