import type { ItemFamily } from '../item-family';

/** The families of the lesson "finder-by-day", in the order of its objectives. */
export const finderByDayItems: readonly ItemFamily[] = [];
