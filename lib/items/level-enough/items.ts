import type { ItemFamily } from '../item-family';

/** The families of the lesson "level-enough", in the order of its objectives. */
export const levelEnoughItems: readonly ItemFamily[] = [];
