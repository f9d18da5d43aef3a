import { fistsAndCompass } from './fists-and-compass';
import { lookAlikes } from './look-alikes';
import { starOrPlanet } from './star-or-planet';
import { strikeOut } from './strike-out';
import { whatAPairCosts } from './what-a-pair-costs';
import { whichPair } from './which-pair';
import type { ItemFamily } from '../item-family';

/** The families of the lesson "choosing-alignment-stars", in the order of its objectives. */
export const choosingAlignmentStarsItems: readonly ItemFamily[] = [
  fistsAndCompass,
  strikeOut,
  starOrPlanet,
  lookAlikes,
  whichPair,
  whatAPairCosts,
];
