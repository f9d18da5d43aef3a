import type { LessonSlug } from '../course/lessons';
import type { ItemFamily } from './item-family';
import { whatIsInTheCaseItems } from './what-is-in-the-case/items';
import { standingItUpItems } from './standing-it-up/items';
import { levelEnoughItems } from './level-enough/items';
import { tubeOnAndBalancedItems } from './tube-on-and-balanced/items';
import { eyepiecesAndViewsItems } from './eyepieces-and-views/items';
import { finderByDayItems } from './finder-by-day/items';
import { powerWithoutSmokeItems } from './power-without-smoke/items';
import { clockAndPlaceItems } from './clock-and-place/items';
import { choosingAlignmentStarsItems } from './choosing-alignment-stars/items';
import { alignOnTwoStarsItems } from './align-on-two-stars/items';
import { whatWentWrongItems } from './what-went-wrong/items';
import { theNightItems } from './the-night/items';

/** Every family of questions, in the order of the course. */
export const itemBank: readonly ItemFamily[] = [
  ...whatIsInTheCaseItems,
  ...standingItUpItems,
  ...levelEnoughItems,
  ...tubeOnAndBalancedItems,
  ...eyepiecesAndViewsItems,
  ...finderByDayItems,
  ...powerWithoutSmokeItems,
  ...clockAndPlaceItems,
  ...choosingAlignmentStarsItems,
  ...alignOnTwoStarsItems,
  ...whatWentWrongItems,
  ...theNightItems,
];

export const familiesOf = (lesson: LessonSlug): readonly ItemFamily[] =>
  itemBank.filter((family) => family.lesson === lesson);

/** @throws {RangeError} for a family that is not in the bank. */
export function familyOf(id: string): ItemFamily {
  const found = itemBank.find((family) => family.id === id);
  if (found === undefined) throw new RangeError(`there is no family "${id}"`);
  return found;
}
