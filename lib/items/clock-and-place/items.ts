import { moment } from './moment';
import { needleAndNorth } from './needle-and-north';
import { seasons } from './seasons';
import { toldWrong } from './told-wrong';
import { turningSky } from './turning-sky';
import { whereItStands } from './where-it-stands';
import type { ItemFamily } from '../item-family';

/** The families of the lesson "clock-and-place", in the order of its objectives. */
export const clockAndPlaceItems: readonly ItemFamily[] = [
  whereItStands,
  turningSky,
  seasons,
  moment,
  toldWrong,
  needleAndNorth,
];
