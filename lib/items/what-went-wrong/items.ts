import type { ItemFamily } from '../item-family';
import { putItRight } from './put-it-right';
import { slewPatterns } from './slew-patterns';
import { testSlew } from './test-slew';
import { turnedSky } from './turned-sky';
import { whenItBegan } from './when-it-began';
import { wrongLights } from './wrong-lights';

/** The families of the lesson "what-went-wrong", in the order of its objectives. */
export const whatWentWrongItems: readonly ItemFamily[] = [
  whenItBegan,
  turnedSky,
  slewPatterns,
  wrongLights,
  testSlew,
  putItRight,
];
