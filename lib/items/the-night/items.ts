import type { ItemFamily } from '../item-family';
import { dewAndGlass } from './dew-and-glass';
import { eyesAndLamps } from './eyes-and-lamps';
import { packingUp } from './packing-up';
import { planOfTheNight } from './plan-of-the-night';
import { signingOff } from './signing-off';
import { whenItIsDark } from './when-it-is-dark';

/** The families of the lesson "the-night", in the order of its objectives. */
export const theNightItems: readonly ItemFamily[] = [
  planOfTheNight,
  whenItIsDark,
  eyesAndLamps,
  dewAndGlass,
  packingUp,
  signingOff,
];
