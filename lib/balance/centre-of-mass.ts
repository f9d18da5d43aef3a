/**
 * Something heavy on a tube. `alongMm` is its place on a tape that lies along the tube and counts
 * towards its back, wherever its zero may be; `aboveAxisMm` is square to it, upward while the tube is
 * level, from the altitude axis.
 */
export type PlacedMass = { massKg: number; alongMm: number; aboveAxisMm: number };

/**
 * All of them as one: x = Σ m x / Σ m, along and across the tube alike. Any first-year statics text.
 * Throws on a mass of nothing, which has no centre.
 */
export function togetherAsOne(masses: readonly PlacedMass[]): PlacedMass {
  const massKg = masses.reduce((sum, mass) => sum + mass.massKg, 0);
  if (!(massKg > 0)) throw new RangeError('what weighs nothing has no centre of mass');
  const mean = (of: (mass: PlacedMass) => number): number =>
    masses.reduce((sum, mass) => sum + mass.massKg * of(mass), 0) / massKg;
  return {
    massKg,
    alongMm: mean((mass) => mass.alongMm),
    aboveAxisMm: mean((mass) => mass.aboveAxisMm),
  };
}

/**
 * How far the balance point moves towards the tube's back when something is put on, millimetres:
 * m (x − x_cg) / (M + m). Negative: towards the front. Design, "Balance"; follows from the sum above.
 */
export const balanceShiftMm = (
  tube: PlacedMass,
  added: Pick<PlacedMass, 'massKg' | 'alongMm'>,
): number => (added.massKg * (added.alongMm - tube.alongMm)) / (tube.massKg + added.massKg);
