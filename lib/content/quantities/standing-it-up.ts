import { caughtUpToMm, gapMm, squeezeN } from '../../assembly/pinch';
import {
  asWeightKg,
  centreOf,
  hubHeightMm,
  stabilityOf,
  tippingPushN,
  type LoadedStand,
} from '../../assembly/stability';
import { plainStand } from '../../drawings/some-stand';
import type { Quantity, ReckoningSources } from '../reckoning';

const word = (words: readonly string[], index: number): string => words[index] ?? '';

/** Our stand with 2 kg of tube hung between two feet, on ground that falls that way. */
const standFrom = (words: readonly string[], { figure }: ReckoningSources): LoadedStand => ({
  ...plainStand,
  armBearingDeg: 180,
  fallsTowardsDeg: 180,
  legLengthMm: figure(word(words, 0)),
  splayDeg: figure(word(words, 1)),
});

/** What the lesson "standing-it-up" asks of the engine beyond what all lessons may. */
export const standingItUpQuantities: Readonly<Record<string, Quantity>> = {
  /** A level push at the mount's arm that tips the stand, kilograms' worth. */
  'tipping-push': {
    takes: 'leg-mm spread-degrees',
    digits: 1,
    value: (words, sources) => {
      const stand = standFrom(words, sources);
      return asWeightKg(tippingPushN(stand, hubHeightMm(stand) + 200));
    },
  },
  /** From the plumb point to the nearest line of feet, millimetres. */
  'plumb-margin': {
    takes: 'leg-mm spread-degrees',
    digits: 0,
    value: (words, sources) => stabilityOf(standFrom(words, sources)).marginMm,
  },
  /** The slope on which it tips by itself, degrees. */
  'tipping-slope': {
    takes: 'leg-mm spread-degrees',
    digits: 0,
    value: (words, sources) => stabilityOf(standFrom(words, sources)).slopeLeftDeg,
  },
  'stand-weight': {
    takes: 'leg-mm spread-degrees',
    digits: 1,
    value: (words, sources) => centreOf(standFrom(words, sources)).massKg,
  },
  /** Room between two legs, millimetres. */
  'leg-gap': {
    takes: 'from-joint-mm spread-degrees',
    digits: 0,
    value: (words, { figure }) => gapMm(figure(word(words, 0)), figure(word(words, 1))),
  },
  /** How far from the joint a finger is caught, millimetres. */
  'caught-within': {
    takes: 'spread-degrees',
    digits: 0,
    value: (words, { figure }) => caughtUpToMm(figure(word(words, 0))),
  },
  /** Kilograms' worth of squeeze from a push at the foot. */
  'leg-squeeze': {
    takes: 'push-kg leg-mm from-joint-mm',
    digits: 0,
    value: (words, { figure }) =>
      squeezeN(figure(word(words, 0)), figure(word(words, 1)), figure(word(words, 2))),
  },
};
