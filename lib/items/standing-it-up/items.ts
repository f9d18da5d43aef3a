import type { ItemFamily } from '../item-family';
import { fingersClear } from './fingers-clear';
import { groundAndHands } from './ground-and-hands';
import { leftOut } from './left-out';
import { overTheFeet } from './over-the-feet';
import { whatRestsOnWhat } from './what-rests-on-what';
import { wideAndLow } from './wide-and-low';

/** The families of the lesson "standing-it-up", in the order of its objectives. */
export const standingItUpItems: readonly ItemFamily[] = [
  whatRestsOnWhat,
  leftOut,
  overTheFeet,
  wideAndLow,
  fingersClear,
  groundAndHands,
];
