import type { ItemFamily } from '../item-family';
import { eyeFinderEyepiece } from './eye-finder-eyepiece';
import { hitRate } from './hit-rate';
import { lastMoves } from './last-moves';
import { middleOfTheField } from './middle-of-the-field';
import { theseTwoAgree } from './these-two-agree';
import { thirdStar } from './third-star';

/** The families of the lesson "align-on-two-stars", in the order of its objectives. */
export const alignOnTwoStarsItems: readonly ItemFamily[] = [
  eyeFinderEyepiece,
  middleOfTheField,
  lastMoves,
  theseTwoAgree,
  thirdStar,
  hitRate,
];
