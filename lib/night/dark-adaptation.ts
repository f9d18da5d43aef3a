/**
 * How many times as much light an eye needs as at its best, some minutes after it left a bright room.
 * Cones reach a plateau of about a thousand times; after some ten minutes the rods take over, gain 0.24
 * powers of ten a minute (Lamb & Pugh 2004, Progress in Retinal and Eye Research 23, 307), then more
 * slowly. The plateau, the time of the change and the slow end are after Hecht, Haig & Chase 1937, from
 * memory: an outline, people differ. Under a bright sky the sky itself sets an end sooner.
 */
export const lightNeeded = (minutes: number): number => 10 ** powersNeeded(minutes);

/** Minutes after which the eye needs as little light as it ever will. */
export const adaptedAfterMinutes = 32;

const changeAtMin = 10;
const plateau = 3;
const fastPerMin = 0.24;
const slowFrom = 1;
const slowAtMin = changeAtMin + (plateau - slowFrom) / fastPerMin;

function powersNeeded(minutes: number): number {
  const cones = plateau + 2 * Math.exp(-Math.max(0, minutes) / 2);
  if (minutes <= changeAtMin) return cones;
  if (minutes <= slowAtMin) return plateau - fastPerMin * (minutes - changeAtMin);
  const slowPerMin = slowFrom / (adaptedAfterMinutes - slowAtMin);
  return Math.max(0, slowFrom - slowPerMin * (minutes - slowAtMin));
}

/**
 * Lamps by the wavelength of most of their light, with how strongly the rods see it for each part that
 * the cones see: V′(λ)/V(λ) of the CIE tables (1951 scotopic, 1924 photopic; from memory). Equally bright
 * to read a chart by, the lamp with less of it leaves the rods alone.
 */
export const lamps = [
  { name: 'deep red', nm: 650, scotopic: 0.000677, photopic: 0.107 },
  { name: 'red', nm: 620, scotopic: 0.00737, photopic: 0.381 },
  { name: 'amber', nm: 590, scotopic: 0.0655, photopic: 0.757 },
  { name: 'green', nm: 550, scotopic: 0.481, photopic: 0.995 },
  { name: 'blue-green', nm: 510, scotopic: 0.997, photopic: 0.503 },
  { name: 'blue', nm: 470, scotopic: 0.676, photopic: 0.091 },
] as const;
export type Lamp = (typeof lamps)[number];

export const rodsForCones = ({ scotopic, photopic }: Lamp): number => scotopic / photopic;
