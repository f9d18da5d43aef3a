import type { ItemFamily } from '../item-family';

/** The families of the lesson "standing-it-up", in the order of its objectives. */
export const standingItUpItems: readonly ItemFamily[] = [];
