import type { ItemFamily } from '../item-family';

/** The families of the lesson "align-on-two-stars", in the order of its objectives. */
export const alignOnTwoStarsItems: readonly ItemFamily[] = [];
