import type { ItemFamily } from '../item-family';

/** The families of the lesson "what-is-in-the-case", in the order of its objectives. */
export const whatIsInTheCaseItems: readonly ItemFamily[] = [];
