import type { ItemFamily } from '../item-family';
import { cellsInARow } from './cells-in-a-row';
import { hoursOnCells } from './hours-on-cells';
import { labelsToRead } from './labels-to-read';
import { orderOfSwitchingOn } from './order-of-switching-on';
import { powerHazards } from './power-hazards';
import { voltsWhileSlewing } from './volts-while-slewing';

/** The families of the lesson "power-without-smoke", in the order of its objectives. */
export const powerWithoutSmokeItems: readonly ItemFamily[] = [
  labelsToRead,
  cellsInARow,
  voltsWhileSlewing,
  hoursOnCells,
  orderOfSwitchingOn,
  powerHazards,
];
