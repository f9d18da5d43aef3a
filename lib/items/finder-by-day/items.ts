import type { ItemFamily } from '../item-family';
import { beforeTheCap } from './before-the-cap';
import { clearOfTheSun } from './clear-of-the-sun';
import { crossedLines } from './crossed-lines';
import { daytimeTarget } from './daytime-target';
import { dotAtNight } from './dot-at-night';
import { twoScrews } from './two-screws';

/** The families of the lesson "finder-by-day", in the order of its objectives. */
export const finderByDayItems: readonly ItemFamily[] = [
  beforeTheCap,
  clearOfTheSun,
  crossedLines,
  daytimeTarget,
  twoScrews,
  dotAtNight,
];
