import type { ItemFamily } from '../item-family';
import { afterTheAlignment } from './after-the-alignment';
import { firstSlewsOnALean } from './first-slews-on-a-lean';
import { halfTurnOfTheVial } from './half-turn-of-the-vial';
import { handsAtTheTripod } from './hands-at-the-tripod';
import { howFarTheLeg } from './how-far-the-leg';
import { readTheBubble } from './read-the-bubble';
import { whichLeg } from './which-leg';

/** The families of the lesson "level-enough", in the order of its objectives. */
export const levelEnoughItems: readonly ItemFamily[] = [
  readTheBubble,
  whichLeg,
  howFarTheLeg,
  halfTurnOfTheVial,
  firstSlewsOnALean,
  afterTheAlignment,
  handsAtTheTripod,
];
