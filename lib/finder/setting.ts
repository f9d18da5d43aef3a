import type { FieldOffset } from '../optics/image-orientation';
import { withHazard, type Companion, type DayHazard, type StandingPlace } from './day-hazard';
import { dotAfterTurns, type Adjusters, type Turns } from './adjusters';
import { leastSunDistanceDeg, nearestToSunDeg, type AzAlt } from './way-past-sun';

export type WhichEyepiece = 'low' | 'high';

/** One thing done while setting a finder. Places are the mount's, angles in degrees. */
export type SettingAction =
  | { do: 'companion'; who: Companion }
  | { do: 'stand'; where: StandingPlace }
  | { do: 'choose'; target: string }
  | { do: 'caps'; on: boolean }
  | ({ do: 'move' } & AzAlt)
  | { do: 'eyepiece'; which: WhichEyepiece }
  /** A screw turned until it stands at so many turns from where it stood at first. */
  | { do: 'turn'; screw: 0 | 1; toTurns: number }
  | { do: 'lock'; on: boolean }
  /** Put it by until dusk. */
  | { do: 'wait' };

/** What the telescope was like before anybody touched it. */
export type SettingStart = {
  tube: AzAlt;
  eyepiece: WhichEyepiece;
  dot: FieldOffset;
  adjusters: Adjusters;
  locked: boolean;
  /** Given by the task; null where it is free. */
  targetId: string | null;
  /** Seen; null when the Sun is down from the start. */
  sun: AzAlt | null;
  /** Whether dusk can be waited for. */
  hasDusk: boolean;
};

/** How things stood at an instant worth keeping. */
export type SettingMoment = {
  tube: AzAlt;
  eyepiece: WhichEyepiece;
  capsOn: boolean;
  targetId: string | null;
  dot: FieldOffset;
  dusk: boolean;
};

export type SettingState = SettingMoment & {
  companion: Companion | null;
  stand: StandingPlace | null;
  turns: Turns;
  locked: boolean;
  /** Whether the wide view was looked into before the open tube was moved with the narrow one; null before either. */
  searchedWith: WhichEyepiece | null;
  /** At the last time the screws were locked; null before. */
  atLock: SettingMoment | null;
  /** The same of the day's, kept when dusk came. */
  dayLock: SettingMoment | null;
  /** At most one of each kind. */
  hazards: readonly DayHazard[];
};

/** Turns of a screw to either side of where it stood; more than any task needs. */
export const mostTurns = 12;
/** At every limit the benefit of a dead band, degrees. Design, "Grading". */
const deadBandDeg = 0.1;

export const settingAtFirst = (start: SettingStart): SettingState => ({
  tube: start.tube,
  eyepiece: start.eyepiece,
  capsOn: true,
  targetId: start.targetId,
  dot: start.dot,
  dusk: start.sun === null,
  companion: null,
  stand: null,
  turns: [0, 0],
  locked: start.locked,
  searchedWith: null,
  atLock: null,
  dayLock: null,
  hazards: [],
});

/**
 * What becomes of a setting by one action; null for what cannot be done then: a locked screw turned,
 * dusk waited for that has come already. A hazard stands once it has happened.
 */
export function settingAfter(
  state: SettingState,
  action: SettingAction,
  start: SettingStart,
): SettingState | null {
  switch (action.do) {
    case 'companion':
      return watched({ ...state, companion: action.who });
    case 'stand':
      return watched({ ...state, stand: action.where });
    case 'choose':
      return { ...state, targetId: action.target };
    case 'caps':
      return action.on ? { ...state, capsOn: true } : opened(state, start);
    case 'move':
      return moved(state, action, start);
    case 'eyepiece':
      return lookedInto({ ...state, eyepiece: action.which });
    case 'turn':
      return state.locked || Math.abs(action.toTurns) > mostTurns
        ? null
        : turned(state, action.screw, action.toTurns, start);
    case 'lock':
      return action.on
        ? { ...state, locked: true, atLock: momentOf(state) }
        : { ...state, locked: false };
    case 'wait':
      return state.dusk || !start.hasDusk ? null : atDusk(state);
  }
}

/** All actions in order; null as soon as one of them cannot have been done. */
export function settingAfterAll(
  start: SettingStart,
  actions: readonly SettingAction[],
): SettingState | null {
  let state: SettingState | null = settingAtFirst(start);
  for (const action of actions) {
    if (state === null) return null;
    state = settingAfter(state, action, start);
  }
  return state;
}

/** The hazards that stand at the end: those that happened, and a tube left open by day. */
export const hazardsAtEnd = (state: SettingState): readonly DayHazard[] =>
  state.dusk || state.capsOn ? state.hazards : withHazard(state.hazards, { id: 'left-open' });

const momentOf = ({
  tube,
  eyepiece,
  capsOn,
  targetId,
  dot,
  dusk,
}: SettingState): SettingMoment => ({
  tube,
  eyepiece,
  capsOn,
  targetId,
  dot,
  dusk,
});

function opened(state: SettingState, { sun }: SettingStart): SettingState {
  const open = lookedInto(watched({ ...state, capsOn: false }));
  return state.dusk || sun === null
    ? open
    : nearSun(open, 'opened-there', leastSunDistanceDeg(state.tube, state.tube, sun));
}

/** With the wide view in and the caps off, it is looked into. */
const lookedInto = (state: SettingState): SettingState =>
  state.capsOn || state.eyepiece === 'high' || state.searchedWith !== null
    ? state
    : { ...state, searchedWith: 'low' };

function moved(state: SettingState, to: AzAlt, { sun }: SettingStart): SettingState {
  const tube = { azimuthDeg: to.azimuthDeg, altitudeDeg: to.altitudeDeg };
  if (state.capsOn) return { ...state, tube };
  const there = { ...state, tube, searchedWith: state.searchedWith ?? state.eyepiece };
  return state.dusk || sun === null
    ? there
    : nearSun(there, 'on-the-way', leastSunDistanceDeg(state.tube, tube, sun));
}

function turned(
  state: SettingState,
  screw: 0 | 1,
  toTurns: number,
  start: SettingStart,
): SettingState {
  const turns: Turns = screw === 0 ? [toTurns, state.turns[1]] : [state.turns[0], toTurns];
  return { ...state, turns, dot: dotAfterTurns(start.dot, start.adjusters, turns) };
}

/** The day's target is not seen any more; a telescope left open until sunset was a hazard all the while. */
const atDusk = (state: SettingState): SettingState => ({
  ...state,
  dusk: true,
  targetId: null,
  dayLock: state.atLock,
  hazards: hazardsAtEnd(state),
});

function nearSun(
  state: SettingState,
  how: 'opened-there' | 'on-the-way',
  distanceDeg: number,
): SettingState {
  return distanceDeg >= nearestToSunDeg - deadBandDeg
    ? state
    : { ...state, hazards: withHazard(state.hazards, { id: 'near-sun', how, distanceDeg }) };
}

/** By day an open telescope needs an adult beside it and a building's shadow round it, all the time. */
function watched(state: SettingState): SettingState {
  if (state.dusk || state.capsOn) return state;
  let { hazards } = state;
  if (state.companion !== 'adult') {
    hazards = withHazard(hazards, { id: 'no-adult', companion: state.companion });
  }
  if (state.stand !== 'building-shadow') {
    hazards = withHazard(hazards, { id: 'not-in-shadow', stand: state.stand });
  }
  return hazards === state.hazards ? state : { ...state, hazards };
}
