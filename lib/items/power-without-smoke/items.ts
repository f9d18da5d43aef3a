import type { ItemFamily } from '../item-family';
import { cellsInARow } from './cells-in-a-row';
import { labelsToRead } from './labels-to-read';

/** The families of the lesson "power-without-smoke", in the order of its objectives. */
export const powerWithoutSmokeItems: readonly ItemFamily[] = [labelsToRead, cellsInARow];
