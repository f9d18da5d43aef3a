import type { ItemFamily } from '../item-family';
import { capsAndGlass } from './caps-and-glass';
import { cardOverTheFront } from './card-over-the-front';
import { lightGathered } from './light-gathered';
import { partAndJob } from './part-and-job';
import { threeTubes } from './three-tubes';
import { wayOfLight } from './way-of-light';

/** The families of the lesson "what-is-in-the-case", in the order of its objectives. */
export const whatIsInTheCaseItems: readonly ItemFamily[] = [
  threeTubes,
  wayOfLight,
  partAndJob,
  lightGathered,
  cardOverTheFront,
  capsAndGlass,
];
