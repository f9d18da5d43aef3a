/** Nine numbers, row by row; it multiplies a column vector from the left. */
export type Matrix3 = readonly [
  ...[number, number, number],
  ...[number, number, number],
  ...[number, number, number],
];
