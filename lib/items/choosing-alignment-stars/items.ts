import { fistsAndCompass } from './fists-and-compass';
import type { ItemFamily } from '../item-family';

/** The families of the lesson "choosing-alignment-stars", in the order of its objectives. */
export const choosingAlignmentStarsItems: readonly ItemFamily[] = [fistsAndCompass];
