import { creepFrom } from './creep';
import type { BalanceBench, BalanceState } from './tube-bench';
import { tubeInClamp } from './tube-in-clamp';

/**
 * A part put on or taken off; what sat in its slot goes. With no hand on the tube it may swing: the
 * same clutch has another weight to hold. The same state where there is nothing to do.
 */
export function changePart(
  bench: BalanceBench,
  state: BalanceState,
  id: string,
  putOn: boolean,
): BalanceState {
  const part = bench.parts.find((one) => one.id === id);
  if (part === undefined || state.on.includes(id) === putOn) return state;
  const slotOf = (one: string): string | null =>
    bench.parts.find((other) => other.id === one)?.slot ?? null;
  const others = state.on.filter(
    (one) => one !== id && !(putOn && part.slot !== null && slotOf(one) === part.slot),
  );
  const changed: BalanceState = {
    ...state,
    on: putOn ? [...others, id] : others,
    arrangement: state.arrangement + 1,
  };
  if (state.handOn || state.clampOpen) return changed;
  const { altitudeDeg } = state;
  const tube = tubeInClamp(bench, changed);
  const { moves, restDeg } = creepFrom(tube, altitudeDeg, bench.holdingTorqueNm);
  if (moves === 'holds') return changed;
  return {
    ...changed,
    altitudeDeg: restDeg,
    swings: [...state.swings, { fromDeg: altitudeDeg, toDeg: restDeg }],
  };
}
