import type { ItemFamily } from '../item-family';

/** The families of the lesson "the-night", in the order of its objectives. */
export const theNightItems: readonly ItemFamily[] = [];
