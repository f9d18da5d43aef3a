import { whatIsInTheCaseLive } from './what-is-in-the-case/live';
import { standingItUpLive } from './standing-it-up/live';
import { levelEnoughLive } from './level-enough/live';
import { tubeOnAndBalancedLive } from './tube-on-and-balanced/live';
import { eyepiecesAndViewsLive } from './eyepieces-and-views/live';
import { finderByDayLive } from './finder-by-day/live';
import { powerWithoutSmokeLive } from './power-without-smoke/live';
import { clockAndPlaceLive } from './clock-and-place/live';
import { choosingAlignmentStarsLive } from './choosing-alignment-stars/live';
import { alignOnTwoStarsLive } from './align-on-two-stars/live';
import { whatWentWrongLive } from './what-went-wrong/live';
import { theNightLive } from './the-night/live';
import type { ComponentType } from 'react';
import type { FigureName } from '@/lib/content/figure-names';
import type { FigureData } from './figure-data';

export const allLive: Readonly<
  Partial<Record<FigureName, () => Promise<ComponentType<FigureData>>>>
> = {
  ...whatIsInTheCaseLive,
  ...standingItUpLive,
  ...levelEnoughLive,
  ...tubeOnAndBalancedLive,
  ...eyepiecesAndViewsLive,
  ...finderByDayLive,
  ...powerWithoutSmokeLive,
  ...clockAndPlaceLive,
  ...choosingAlignmentStarsLive,
  ...alignOnTwoStarsLive,
  ...whatWentWrongLive,
  ...theNightLive,
};
