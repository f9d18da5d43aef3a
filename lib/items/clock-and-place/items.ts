import type { ItemFamily } from '../item-family';

/** The families of the lesson "clock-and-place", in the order of its objectives. */
export const clockAndPlaceItems: readonly ItemFamily[] = [];
