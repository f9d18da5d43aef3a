import type { ItemFamily } from '../item-family';

/** The families of the lesson "tube-on-and-balanced", in the order of its objectives. */
export const tubeOnAndBalancedItems: readonly ItemFamily[] = [];
