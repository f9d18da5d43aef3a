/** Full within `full`, nothing beyond `zero`, a straight line between. `off` and both are of one unit, ≥ 0. */
export const bandShare = (off: number, { full, zero }: { full: number; zero: number }): number =>
  Math.min(1, Math.max(0, (zero - off) / (zero - full)));
