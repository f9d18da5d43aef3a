import type { HandAtStar, RehearsedEvening } from './rehearsed-evening';
import { noSlips, type Slips } from './slips';

/** Everything that moves the point at which a go-to lands, by the part of the evening it comes from. */
export const causeIds = [
  /** A base off level. */
  'tilt',
  /** Clock, date, zone or summer time. */
  'clock',
  'place',
  'start-azimuth',
  'start-altitude',
  /** The finder's residual, where a star was confirmed by the dot. */
  'finder',
  /** Where the star was left in the eyepiece. */
  'first-centring',
  'second-centring',
  /** Play in the readings: the last move went the wrong way. */
  'final-approach',
  /** Another light than the one that was asked for. */
  'wrong-light',
  /** The tube creeps in its clutch. */
  'creep',
  'clutch',
  /** Somebody met the tripod. */
  'kick',
  /** The computer lost its voltage, and with it the alignment. */
  'supply',
  /** How the telescope is made: index, cone and skew. */
  'making',
] as const;
export type CauseId = (typeof causeIds)[number];

type Change = (evening: RehearsedEvening) => RehearsedEvening;

const slipping =
  (change: (slips: Slips) => Partial<Slips>): Change =>
  (evening) => ({ ...evening, slips: { ...evening.slips, ...change(evening.slips) } });

const handling =
  (change: (hand: HandAtStar, star: number) => Partial<HandAtStar>): Change =>
  (evening) => ({
    ...evening,
    hands: evening.hands.map((hand, star) => ({ ...hand, ...change(hand, star) })),
  });

const middle = { rightArcmin: 0, upArcmin: 0 };
const centring = (which: number): Change =>
  handling((_, star) => (star === which ? { left: middle } : {}));

const switchedOff: Readonly<Record<CauseId, Change>> = {
  tilt: slipping(() => ({ tilt: noSlips.tilt })),
  clock: slipping(({ clockAndPlace }) => ({
    clockAndPlace: { ...clockAndPlace, clockSeconds: 0 },
  })),
  place: slipping(({ clockAndPlace: { clockSeconds } }) => ({
    clockAndPlace: { ...noSlips.clockAndPlace, clockSeconds },
  })),
  'start-azimuth': slipping(({ start }) => ({ start: { ...start, azimuthDeg: 0 } })),
  'start-altitude': slipping(({ start }) => ({ start: { ...start, altitudeDeg: 0 } })),
  finder: slipping(() => ({ dot: noSlips.dot })),
  'first-centring': centring(0),
  'second-centring': centring(1),
  'final-approach': handling(() => ({ lagArcmin: { azimuth: 0, altitude: 0 } })),
  'wrong-light': handling(({ hip }) => ({ light: { hip } })),
  creep: slipping(() => ({ creep: noSlips.creep })),
  clutch: slipping(() => ({ clutch: null })),
  kick: slipping(() => ({ kick: null })),
  supply: slipping(() => ({ resetsAtSlew: null })),
  making: (evening) => ({
    ...evening,
    telescope: {
      ...evening.telescope,
      errors: { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
    },
  }),
};

/** The evening as it would have been without one cause; all else, the hand's doings too, stays. */
export const without = (evening: RehearsedEvening, cause: CauseId): RehearsedEvening =>
  switchedOff[cause](evening);

/** The evening as it would have been with that cause and no other. */
export const withOnly = (evening: RehearsedEvening, cause: CauseId): RehearsedEvening =>
  causeIds
    .filter((one) => one !== cause)
    .reduce<RehearsedEvening>((left, one) => without(left, one), evening);

/** The evening on which nothing went wrong. */
export const withoutAny = (evening: RehearsedEvening): RehearsedEvening =>
  causeIds.reduce<RehearsedEvening>((left, one) => without(left, one), evening);
