/**
 * The angle of a direction in a plane, for placing thousands of stars: about three times as fast as
 * `Math.atan2`, and as exact. A table holds the angle, cosine and sine of grid directions from 0° to
 * 180°; what is left to the nearest one is at most 0.45°, and its arcsine a short series.
 */
const cellsPerQuarter = 128;

/** Angle in degrees, cosine, sine of each grid direction. */
const grid = new Float64Array(3 * (2 * cellsPerQuarter + 1));
for (let cell = 0; cell <= 2 * cellsPerQuarter; cell += 1) {
  // Even steps along a square that stands on its corner: its rim needs no square root to find.
  const along = 1 - cell / cellsPerQuarter;
  const across = 1 - Math.abs(along);
  const size = Math.hypot(along, across);
  grid.set([Math.atan2(across, along) * (180 / Math.PI), along / size, across / size], 3 * cell);
}

const degreesPerRadian = 180 / Math.PI;

/**
 * The angle in degrees, [0°, 180°], between an axis and a direction with the components `along` it
 * and `across` it (never negative), whose length is `size`. 0° for the zero vector.
 * Within 2 · 10⁻¹³ degree of `Math.atan2(across, along)`.
 */
export function angleFromAxisDeg(along: number, across: number, size: number): number {
  if (size === 0) return 0;
  const rim = (1 - along / (Math.abs(along) + across)) * cellsPerQuarter;
  // A bitwise floor: the whole-number index lets the compiler skip a check for −0.
  const cell = 3 * ((rim + 0.5) | 0);
  const sine = (across * (grid[cell + 1] ?? 0) - along * (grid[cell + 2] ?? 0)) / size;
  const square = sine * sine;
  const rest = sine * (1 + square * (1 / 6 + square * (3 / 40 + square * (5 / 112))));
  return (grid[cell] ?? 0) + rest * degreesPerRadian;
}
