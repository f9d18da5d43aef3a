import type { ItemFamily } from '../item-family';
import { overTheFeet } from './over-the-feet';
import { whatRestsOnWhat } from './what-rests-on-what';

/** The families of the lesson "standing-it-up", in the order of its objectives. */
export const standingItUpItems: readonly ItemFamily[] = [whatRestsOnWhat, overTheFeet];
