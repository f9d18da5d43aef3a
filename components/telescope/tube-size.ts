import type { TubeType } from '@/lib/optics/image-orientation';

/** One unit of every drawing here is about this long on the telescope. */
const mmPerUnit = 3;

const units = (mm: number): number => mm / mmPerUnit;

/**
 * Outer sizes of the three tubes in drawing units, from the altitude axis where the arm holds them:
 * how far the front and the back reach, and half the width. From memory, after the common build of
 * such tubes with the focal lengths and apertures of our kits.
 */
export type TubeSize = { front: number; back: number; radius: number };

export const tubeSizes: Readonly<Record<TubeType, TubeSize>> = {
  // 80 mm f/6.25: slim, as long as its focal length, the dew shield included.
  refractor: { front: units(270), back: units(210), radius: units(44) },
  // 120 mm f/5: as wide as its mirror with room round it.
  reflector: { front: units(315), back: units(285), radius: units(72) },
  // 105 mm f/13: the light goes three times through a short tube.
  'maksutov-cassegrain': { front: units(150), back: units(150), radius: units(62) },
};
