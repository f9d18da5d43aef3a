import type { ItemFamily } from '../item-family';
import { eyeAndSun } from './eye-and-sun';
import { eyepieceForIt } from './eyepiece-for-it';
import { sharpStars } from './sharp-stars';
import { skyInTheRing } from './sky-in-the-ring';
import { starAdrift } from './star-adrift';
import { timesLarger } from './times-larger';
import { whichWayRound } from './which-way-round';

/** The families of the lesson "eyepieces-and-views", in the order of its objectives. */
export const eyepiecesAndViewsItems: readonly ItemFamily[] = [
  timesLarger,
  skyInTheRing,
  starAdrift,
  eyepieceForIt,
  whichWayRound,
  sharpStars,
  eyeAndSun,
];
