import { tubeInClamp } from '@/lib/balance/tube-in-clamp';
import type { Refusal } from '@/lib/balance/handle-tube';
import { torqueNm } from '@/lib/balance/torque';
import type { BalanceAction, BalanceState, Hazard, Moves } from '@/lib/balance/tube-bench';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';

export const movesWords: Readonly<Record<Moves, string>> = {
  front: 'The front sinks',
  back: 'The back sinks',
  holds: 'It stays where it is',
};

export const degText = (deg: number): string =>
  `${deg < -0.5 ? '−' : ''}${Math.abs(deg).toFixed(0)}°`;
export const mmText = (mm: number): string => `${mm.toFixed(0)} mm`;
export const torqueText = (nm: number): string => `${Math.abs(nm).toFixed(2)} N·m`;

/** Which way the tube has to go when the clamp is to grip that much farther along the tape. */
export const slideText = (mm: number): string =>
  `${mmText(Math.abs(mm))} ${mm > 0 ? 'forward' : 'back'}`;

export const partName = ({ parts }: BalanceVariant, id: string): string =>
  parts.find((part) => part.id === id)?.name ?? id;

/** What is on the tube, for a line of text. */
export const onInWords = (variant: BalanceVariant, on: readonly string[]): string =>
  variant.parts
    .filter(({ id }) => on.includes(id))
    .map(({ name }) => name)
    .join(', ');

/** The tube in one line. */
export function stateInWords(state: BalanceState): string {
  if (state.fallen) return 'The tube lies on the ground.';
  return [
    state.handOn ? 'A hand holds the tube' : 'No hand on the tube',
    `clamp ${state.clampOpen ? 'open' : 'locked'} at ${mmText(state.clampMm)}`,
    `stop screw ${state.stopIn ? 'in' : 'out'}`,
    `altitude ${degText(state.altitudeDeg)}`,
  ].join(', ');
}

export const refusalWords: Readonly<Record<Refusal, string>> = {
  'foresee-first': 'First say in the panel what you expect. Then touch the tube.',
  'lies-on-the-ground': 'The tube lies on the ground. Put it back first.',
  'clamp-locked': 'The clamp is locked: the tube does not slide.',
  'stop-screw-in': 'The stop screw still bites the bar: the tube does not slide.',
  'clamp-open': 'The clamp is open. Lock it before you raise the tube.',
  'no-hand': 'Put a hand on the tube first, then raise or lower it.',
  'nothing-to-do': 'That is how it is already.',
};

const hazardWords: Readonly<Record<Hazard['outcome'], string>> = {
  fell: 'Nothing held the tube: it slid out of the clamp and fell.',
  'caught-by-stop-screw':
    'Nothing held the tube: it jolted down the clamp and hangs on the stop screw alone.',
  'clamp-alone-held': 'The stop screw is out: the clamp alone keeps the tube from falling.',
};

/** What the status line says once an action was done. */
export function happenedInWords(
  variant: BalanceVariant,
  before: BalanceState,
  after: BalanceState,
  action: BalanceAction,
): string {
  const hazard = after.hazards.length > before.hazards.length ? after.hazards.at(-1) : undefined;
  const trial = after.trials.length > before.trials.length ? after.trials.at(-1) : undefined;
  const parts = [
    trial === undefined ? '' : trialInWords(variant, before, trial),
    hazard === undefined ? '' : hazardWords[hazard.outcome],
  ].filter((part) => part !== '');
  return parts.length > 0 ? parts.join(' ') : plainlyDone(variant, before, after, action);
}

function trialInWords(
  variant: BalanceVariant,
  state: BalanceState,
  trial: { altitudeDeg: number; moves: Moves; restDeg: number },
): string {
  const at = `Let go at ${degText(trial.altitudeDeg)}:`;
  if (trial.moves === 'holds') return `${at} it stays where it is.`;
  const pull = Math.abs(torqueNm(tubeInClamp(variant, state), trial.altitudeDeg));
  const pace = pull < 1.4 * variant.holdingTorqueNm ? 'slowly' : 'fast';
  return `${at} the ${trial.moves} sinks ${pace}; the tube comes to rest at ${degText(trial.restDeg)}.`;
}

function plainlyDone(
  variant: BalanceVariant,
  before: BalanceState,
  after: BalanceState,
  action: BalanceAction,
): string {
  switch (action.do) {
    case 'foresee':
      return 'Noted. Now try it.';
    case 'hand':
      return action.on ? 'A hand is under the tube.' : 'The hand is away.';
    case 'clamp':
      return action.open
        ? 'The clamp is open; your hand carries the tube.'
        : `The clamp is locked at ${mmText(after.clampMm)}.`;
    case 'stop':
      return action.in ? 'The stop screw bites the bar.' : 'The stop screw is out.';
    case 'slide':
      return after.clampMm === variant.bar.leastMm || after.clampMm === variant.bar.mostMm
        ? `The clamp is at ${mmText(after.clampMm)}: the bar ends here.`
        : `The clamp is at ${mmText(after.clampMm)}.`;
    case 'tip':
      return `The tube is at ${degText(after.altitudeDeg)}, held by hand.`;
    case 'part': {
      const done = `The ${partName(variant, action.id)} is ${action.on ? 'on' : 'off'}.`;
      return after.swings.length > before.swings.length
        ? `${done} No hand was on the tube: it swung from ${degText(before.altitudeDeg)} to ${degText(after.altitudeDeg)}.`
        : done;
    }
    case 'pick-up':
      return 'The tube is back in the clamp, with a hand under it. In the field it might be broken.';
  }
}
