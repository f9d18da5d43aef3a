import type { ItemFamily } from '../item-family';

/** The families of the lesson "eyepieces-and-views", in the order of its objectives. */
export const eyepiecesAndViewsItems: readonly ItemFamily[] = [];
