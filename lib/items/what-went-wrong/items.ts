import type { ItemFamily } from '../item-family';

/** The families of the lesson "what-went-wrong", in the order of its objectives. */
export const whatWentWrongItems: readonly ItemFamily[] = [];
