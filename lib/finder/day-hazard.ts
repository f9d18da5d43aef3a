/** Who stands beside the telescope. */
export const companions = ['nobody', 'classmate', 'adult'] as const;
export type Companion = (typeof companions)[number];
/** Where the telescope stands. */
export const standingPlaces = ['open-ground', 'under-a-tree', 'building-shadow'] as const;
export type StandingPlace = (typeof standingPlaces)[number];
/** What must not happen by day, with the worst of it. */
export type DayHazard =
  | { id: 'near-sun'; how: 'opened-there' | 'on-the-way'; distanceDeg: number }
  | { id: 'no-adult'; companion: Companion | null }
  | { id: 'not-in-shadow'; stand: StandingPlace | null }
  | { id: 'left-open' };

/** The first of a kind is kept, but of ways past the Sun the nearest. */
export function withHazard(hazards: readonly DayHazard[], hazard: DayHazard): readonly DayHazard[] {
  const before = hazards.find(({ id }) => id === hazard.id);
  if (before === undefined) return [...hazards, hazard];
  const nearer =
    before.id === 'near-sun' && hazard.id === 'near-sun' && hazard.distanceDeg < before.distanceDeg;
  return nearer ? hazards.map((one) => (one === before ? hazard : one)) : hazards;
}
