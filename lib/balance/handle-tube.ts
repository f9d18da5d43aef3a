import { changePart } from './change-part';
import { creepFrom } from './creep';
import {
  startOf,
  type BalanceAction,
  type BalanceBench,
  type BalanceState,
  type Hazard,
} from './tube-bench';
import { tubeInClamp } from './tube-in-clamp';

/** Raised higher than this, a tube runs down the clamp when it opens; degrees. Common practice, no source. */
export const levelEnoughToSlideDeg = 20;

export type Refusal =
  | 'foresee-first'
  | 'lies-on-the-ground'
  | 'clamp-locked'
  | 'stop-screw-in'
  | 'clamp-open'
  | 'no-hand'
  | 'nothing-to-do';

export type Handled =
  | { ok: true; state: BalanceState }
  /** It cannot be done as things stand; nothing changed. */
  | { ok: false; why: Refusal; state: BalanceState };

/** One thing done at the bench, and what the tube makes of it. */
export function handleTube(
  bench: BalanceBench,
  state: BalanceState,
  action: BalanceAction,
): Handled {
  const refuse = (why: Refusal): Handled => ({ ok: false, why, state });
  const done = (next: BalanceState): Handled => ({ ok: true, state: next });
  if (action.do === 'foresee')
    return bench.asksForesight && untouched(bench, state)
      ? done({ ...state, foreseen: action.moves })
      : refuse('nothing-to-do');
  if (bench.asksForesight && state.foreseen === null) return refuse('foresee-first');
  if (action.do === 'pick-up')
    return state.fallen ? done(pickedUp(state)) : refuse('nothing-to-do');
  if (state.fallen) return refuse('lies-on-the-ground');
  switch (action.do) {
    case 'hand':
      if (action.on === state.handOn) return refuse('nothing-to-do');
      return done(action.on ? { ...state, handOn: true } : letGo(bench, state));
    case 'clamp':
      if (action.open === state.clampOpen) return refuse('nothing-to-do');
      return done(action.open ? openClamp(state) : { ...state, clampOpen: false });
    case 'stop':
      if (action.in === state.stopIn) return refuse('nothing-to-do');
      return done(turnStopScrew(state, action.in));
    case 'slide':
      if (!state.clampOpen) return refuse('clamp-locked');
      if (state.stopIn) return refuse('stop-screw-in');
      return done(slideTo(bench, state, action.toMm));
    case 'tip':
      if (!state.handOn) return refuse('no-hand');
      if (state.clampOpen) return refuse('clamp-open');
      return done({ ...state, altitudeDeg: Math.max(0, Math.min(90, action.toDeg)) });
    case 'part':
      return done(changePart(bench, state, action.id, action.on));
  }
}

/** Everything done from the start, in order. What could not be done changed nothing. */
export const afterAll = (bench: BalanceBench, actions: readonly BalanceAction[]): BalanceState =>
  actions.reduce((state, action) => handleTube(bench, state, action).state, startOf(bench));

const untouched = (bench: BalanceBench, state: BalanceState): boolean =>
  JSON.stringify({ ...state, foreseen: null }) === JSON.stringify(startOf(bench));

const pickedUp = (state: BalanceState): BalanceState => ({
  ...state,
  fallen: false,
  handOn: true,
  clampOpen: false,
  stopIn: false,
  altitudeDeg: 0,
});

const withHazard = (state: BalanceState, hazard: Hazard): BalanceState => ({
  ...state,
  hazards: [...state.hazards, hazard],
  fallen: hazard.outcome === 'fell',
});

function openClamp(state: BalanceState): BalanceState {
  const opened = { ...state, clampOpen: true };
  if (!state.handOn)
    return withHazard(opened, {
      id: 'opened-unsupported',
      outcome: state.stopIn ? 'caught-by-stop-screw' : 'fell',
    });
  return state.altitudeDeg > levelEnoughToSlideDeg
    ? { ...opened, openedRaisedDeg: [...state.openedRaisedDeg, state.altitudeDeg] }
    : opened;
}

function turnStopScrew(state: BalanceState, into: boolean): BalanceState {
  const turned = { ...state, stopIn: into };
  // It was the last thing that held the tube.
  return !into && state.clampOpen && !state.handOn
    ? withHazard(turned, { id: 'opened-unsupported', outcome: 'fell' })
    : turned;
}

function letGo(bench: BalanceBench, state: BalanceState): BalanceState {
  const left = { ...state, handOn: false };
  if (state.clampOpen)
    return withHazard(left, {
      id: 'let-go-loose',
      outcome: state.stopIn ? 'caught-by-stop-screw' : 'fell',
    });
  const { moves, restDeg } = creepFrom(
    tubeInClamp(bench, state),
    state.altitudeDeg,
    bench.holdingTorqueNm,
  );
  const { arrangement, clampMm, altitudeDeg } = state;
  const tried = {
    ...left,
    altitudeDeg: restDeg,
    trials: [...state.trials, { arrangement, clampMm, altitudeDeg, moves, restDeg }],
  };
  return state.stopIn
    ? tried
    : withHazard(tried, { id: 'let-go-loose', outcome: 'clamp-alone-held' });
}

function slideTo(bench: BalanceBench, state: BalanceState, toMm: number): BalanceState {
  const { leastMm, mostMm } = bench.bar;
  const clampMm = Math.max(leastMm, Math.min(mostMm, toMm));
  return clampMm === state.clampMm
    ? state
    : { ...state, clampMm, arrangement: state.arrangement + 1 };
}
