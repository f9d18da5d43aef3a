import type { ItemKit } from '../item-family';

/** "27.8", "54": at most so many decimals, none for nothing; a true minus. */
export const inNumber = (value: number, decimals = 0): string =>
  String(Number(value.toFixed(decimals))).replace('-', '−');

/** Three figures at most: 5.56, 27.8, 152. */
export const inThree = (value: number): string =>
  inNumber(value, value >= 100 ? 0 : value >= 10 ? 1 : 2);

/** "Wren (focal length 500 mm)" */
export const withFocalLength = ({ name, focalLengthMm }: ItemKit): string =>
  `${name} (focal length ${String(focalLengthMm)} mm)`;

export const withAperture = ({ name, apertureMm }: ItemKit): string =>
  `${name} (${String(apertureMm)} mm wide)`;

/** "the 9 mm eyepiece" */
export const eyepieceOf = (focalLengthMm: number): string =>
  `the ${String(focalLengthMm)} mm eyepiece`;

/** Focal lengths that eyepieces are sold in, millimetres; common practice, no source. */
export const soldFocalLengths = [32, 25, 20, 18, 15, 12, 10, 9, 8, 6] as const;
/** The apparent field of the product's own eyepieces. */
export const usualFieldDeg = 50;
