import { whatIsInTheCaseStills } from './what-is-in-the-case/stills';
import { standingItUpStills } from './standing-it-up/stills';
import { levelEnoughStills } from './level-enough/stills';
import { tubeOnAndBalancedStills } from './tube-on-and-balanced/stills';
import { eyepiecesAndViewsStills } from './eyepieces-and-views/stills';
import { finderByDayStills } from './finder-by-day/stills';
import { powerWithoutSmokeStills } from './power-without-smoke/stills';
import { clockAndPlaceStills } from './clock-and-place/stills';
import { choosingAlignmentStarsStills } from './choosing-alignment-stars/stills';
import { alignOnTwoStarsStills } from './align-on-two-stars/stills';
import { whatWentWrongStills } from './what-went-wrong/stills';
import { theNightStills } from './the-night/stills';
import type { ReactNode } from 'react';
import type { FigureName } from '@/lib/content/figure-names';
import type { FigureData } from './figure-data';

export const allStills: Readonly<Record<FigureName, (data: FigureData) => ReactNode>> = {
  ...whatIsInTheCaseStills,
  ...standingItUpStills,
  ...levelEnoughStills,
  ...tubeOnAndBalancedStills,
  ...eyepiecesAndViewsStills,
  ...finderByDayStills,
  ...powerWithoutSmokeStills,
  ...clockAndPlaceStills,
  ...choosingAlignmentStarsStills,
  ...alignOnTwoStarsStills,
  ...whatWentWrongStills,
  ...theNightStills,
};
