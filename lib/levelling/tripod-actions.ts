import {
  legIndices,
  startOf,
  type Leg,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from './tripod';

/** What a pair of hands can do at the tripod. */
export type TripodAction =
  /** Step on the foot's spur until it goes in no further. */
  | { do: 'tread-in'; leg: LegIndex }
  | { do: 'open'; leg: LegIndex }
  /** To a whole millimetre of the leg's length; only while its lock is open. */
  | { do: 'slide'; leg: LegIndex; toMm: number }
  | { do: 'lock'; leg: LegIndex }
  /** The arm with the vial goes round by half a turn, or back. */
  | { do: 'turn-arm' }
  | { do: 'tube-on' }
  | { do: 'tube-off' }
  /** A second pair of hands takes the weight. */
  | { do: 'hold' }
  | { do: 'let-go' };

export type NotPossible =
  /** Two legs open at once and the tripod goes over. */
  'one-leg-at-a-time' | 'locked' | 'out-of-range' | 'nothing-to-do' | 'does-not-turn';

export type ActionOutcome = { ok: true; state: TripodState } | { ok: false; reason: NotPossible };

const refused = (reason: NotPossible): ActionOutcome => ({ ok: false, reason });

/** What an action makes of the tripod. The site is a constant of the task. */
export function act(site: TripodSite, state: TripodState, action: TripodAction): ActionOutcome {
  const done = (next: TripodState): ActionOutcome => ({ ok: true, state: underLoad(site, next) });
  switch (action.do) {
    case 'tread-in':
      return state.legs[action.leg].sunk
        ? refused('nothing-to-do')
        : done(withLeg(state, action.leg, { sunk: true }));
    case 'open':
      if (state.legs[action.leg].open) return refused('nothing-to-do');
      if (state.legs.some(({ open }) => open)) return refused('one-leg-at-a-time');
      return done(withLeg(state, action.leg, { open: true, slid: false }));
    case 'slide':
      return slid(site, state, action.leg, action.toMm, done);
    case 'lock':
      return state.legs[action.leg].open
        ? done(withLeg(state, action.leg, { open: false, slid: false }))
        : refused('nothing-to-do');
    case 'turn-arm':
      return site.armTurns
        ? done({ ...state, armTurned: !state.armTurned })
        : refused('does-not-turn');
    case 'tube-on':
    case 'tube-off': {
      const tubeOn = action.do === 'tube-on';
      return state.tubeOn === tubeOn ? refused('nothing-to-do') : done({ ...state, tubeOn });
    }
    case 'hold':
    case 'let-go': {
      const held = action.do === 'hold';
      return state.held === held ? refused('nothing-to-do') : done({ ...state, held });
    }
  }
}

function slid(
  site: TripodSite,
  state: TripodState,
  leg: LegIndex,
  toMm: number,
  done: (next: TripodState) => ActionOutcome,
): ActionOutcome {
  const { open, slid: before, lengthMm } = state.legs[leg];
  if (!open) return refused('locked');
  if (!(toMm >= site.legMinMm && toMm <= site.legMaxMm)) return refused('out-of-range');
  if (toMm === lengthMm) return refused('nothing-to-do');
  return done({
    ...withLeg(state, leg, { lengthMm: toMm, slid: true }),
    moves: state.moves + (before ? 0 : 1),
  });
}

function withLeg(state: TripodState, leg: LegIndex, change: Partial<Leg>): TripodState {
  const changed = (index: LegIndex): Leg =>
    index === leg ? { ...state.legs[index], ...change } : state.legs[index];
  return { ...state, legs: [changed(0), changed(1), changed(2)] };
}

/** With the tube on, every foot goes in, and an open leg that nobody holds runs in to its end. */
function underLoad(site: TripodSite, state: TripodState): TripodState {
  if (!state.tubeOn) return state;
  let loaded = state;
  for (const leg of legIndices) {
    loaded = withLeg(loaded, leg, { sunk: true });
    if (loaded.legs[leg].open && !loaded.held) {
      loaded = {
        ...withLeg(loaded, leg, { lengthMm: site.legMinMm }),
        ranIn: loaded.ranIn ?? leg,
      };
    }
  }
  return loaded;
}

/** Every state from the start to the last action; null where an action was not possible. */
export function replay(
  site: TripodSite,
  actions: readonly TripodAction[],
): readonly [TripodState, ...TripodState[]] | null {
  const states: [TripodState, ...TripodState[]] = [startOf(site)];
  let state = states[0];
  for (const action of actions) {
    const outcome = act(site, state, action);
    if (!outcome.ok) return null;
    state = outcome.state;
    states.push(state);
  }
  return states;
}

/** The log after one more action: a leg that slides on in one go is one entry, however often it was pushed. */
export function logged(
  actions: readonly TripodAction[],
  action: TripodAction,
): readonly TripodAction[] {
  const last = actions.at(-1);
  const goesOn = last?.do === 'slide' && action.do === 'slide' && last.leg === action.leg;
  return [...(goesOn ? actions.slice(0, -1) : actions), action];
}
