import type { BalanceState, Hazard } from '../../../balance/tube-bench';
import type { BalanceGate } from './balance-result';

const outcomes = ['fell', 'caught-by-stop-screw', 'clamp-alone-held'] as const;

/** Every way in which the tube was free to fall, once, with the worst that came of it. */
export function balanceGates(state: BalanceState): BalanceGate[] {
  const hazards = [...state.hazards, ...leftLoose(state)];
  return (['opened-unsupported', 'let-go-loose'] as const).flatMap((id) => {
    const these = hazards.filter((hazard) => hazard.id === id);
    const outcome = outcomes.find((one) => these.some((hazard) => hazard.outcome === one));
    return outcome === undefined ? [] : [{ id, times: these.length, outcome }];
  });
}

/** The stop screw was turned out only after the hand had left, and stayed out. */
function leftLoose({ handOn, stopIn, clampOpen, hazards }: BalanceState): Hazard[] {
  const known = hazards.some(({ id }) => id === 'let-go-loose');
  return handOn || stopIn || clampOpen || known
    ? []
    : [{ id: 'let-go-loose', outcome: 'clamp-alone-held' }];
}
