import { degreesToRadians } from '../units/angle';
import {
  carriedMm,
  legIndices,
  tiltOfHead,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from './tripod';
import { vialShowsDeg } from './vial';

/** One way to level the head: the legs that move, and to what length. */
export type Levelling = { legs: readonly LegIndex[]; lengthsMm: readonly [number, number, number] };

const setsOfLegs: readonly (readonly LegIndex[])[] = [
  [],
  [0],
  [1],
  [2],
  [0, 1],
  [0, 2],
  [1, 2],
  [0, 1, 2],
];

/**
 * Every way to level the head with as few legs as can be, within what the vial shows, each foot where
 * it is now. Level is when all three carry equally high, so the legs that stay say how high; where none
 * stays it is the height nearest to the present mean that all can reach. Empty where the ranges allow none.
 */
export function fewestMoves(site: TripodSite, state: TripodState): Levelling[] {
  let found: Levelling[] = [];
  for (const set of setsOfLegs) {
    const [least] = found;
    if (least !== undefined && set.length > least.legs.length) break;
    const lengthsMm = levelledBy(site, state, set);
    if (lengthsMm !== null) found = [...found, { legs: set, lengthsMm }];
  }
  const travel = ({ lengthsMm }: Levelling) =>
    legIndices.reduce<number>(
      (sum, leg) => sum + Math.abs(lengthsMm[leg] - state.legs[leg].lengthMm),
      0,
    );
  return found.sort((a, b) => travel(a) - travel(b));
}

function levelledBy(
  site: TripodSite,
  state: TripodState,
  set: readonly LegIndex[],
): Levelling['lengthsMm'] | null {
  const cos = Math.cos(degreesToRadians(site.splayDeg));
  /** How high a leg would carry with no length at all. */
  const base = (leg: LegIndex) => carriedMm(site, state, leg) - state.legs[leg].lengthMm * cos;
  const staying = legIndices.filter((leg) => !set.includes(leg));
  const heights = (staying.length > 0 ? staying : legIndices).map((leg) =>
    carriedMm(site, state, leg),
  );
  const mean = heights.reduce((sum, height) => sum + height, 0) / heights.length;
  const lowest = Math.max(...legIndices.map((leg) => base(leg) + site.legMinMm * cos));
  const highest = Math.min(...legIndices.map((leg) => base(leg) + site.legMaxMm * cos));
  const height = staying.length > 0 ? mean : Math.min(highest, Math.max(lowest, mean));

  const lengthOf = (leg: LegIndex) =>
    set.includes(leg) ? Math.round((height - base(leg)) / cos) : state.legs[leg].lengthMm;
  const lengthsMm = [lengthOf(0), lengthOf(1), lengthOf(2)] as const;
  if (lengthsMm.some((mm) => mm < site.legMinMm || mm > site.legMaxMm)) return null;
  const [a, b, c] = state.legs;
  const levelled: TripodState = {
    ...state,
    legs: [
      { ...a, lengthMm: lengthsMm[0] },
      { ...b, lengthMm: lengthsMm[1] },
      { ...c, lengthMm: lengthsMm[2] },
    ],
  };
  return tiltOfHead(site, levelled).tiltDeg <= vialShowsDeg ? lengthsMm : null;
}
