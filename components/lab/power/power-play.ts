import { act, replay, type Acted, type Happening } from '@/lib/power/act';
import { benchAtStart, type PowerAction, type PowerBench } from '@/lib/power/power-bench';
import { slewingV, terminalsOf, type ComputerState } from '@/lib/power/terminals';
import { mostPowerActions, type PowerDraft } from '@/lib/grading/bench/power/power-submission';
import type { PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { saidOf, whyNot } from './power-sayings';

export type PowerViewProps = BenchViewProps<PowerVariant, PowerDraft>;

/** The bench as the work so far has left it. Work of another bench, which cannot be, counts as none. */
export function benchOf(
  { setup }: PowerVariant,
  { actions }: PowerDraft,
): { bench: PowerBench; happened: readonly Happening[] } {
  const start = benchAtStart(setup);
  return replay(setup, start, actions) ?? { bench: start, happened: [] };
}

export type Readout = {
  /** At the telescope's socket; null is an open circuit. */
  volts: number | null;
  amps: number;
  computer: ComputerState;
  /** The last thing done was to slew: it goes on until something else is done. */
  slewing: boolean;
  /** The slew pulled the volts too low: the computer starts afresh, its alignment gone. */
  restarted: boolean;
};

export function readoutOf(
  { setup }: PowerVariant,
  { actions }: PowerDraft,
  bench: PowerBench,
): Readout {
  const { volts, currentA, computer } = terminalsOf(setup, bench);
  const sagged = actions.at(-1)?.do === 'slew' ? slewingV(setup, bench) : null;
  if (sagged === null) return { volts, amps: currentA, computer, slewing: false, restarted: false };
  return {
    volts: sagged,
    amps: setup.needs.slewingA,
    computer,
    slewing: true,
    restarted: sagged < setup.needs.resetBelowV,
  };
}

/** Does one thing at the bench, as far as it can be done, and says what is to be seen. */
export function perform(
  { variant, draft, mode, change }: PowerViewProps,
  action: PowerAction,
): void {
  const { bench } = benchOf(variant, draft);
  const acted: Acted | null = act(variant.setup, bench, action);
  if (acted === null) {
    change(draft, whyNot(bench, action));
    return;
  }
  if (draft.actions.length >= mostPowerActions) {
    change(draft, 'That was a great deal of work. Start afresh to go on.');
    return;
  }
  const next = { ...draft, actions: [...draft.actions, action] };
  const readout = readoutOf(variant, next, acted.bench);
  change(next, saidOf({ variant, action, ...acted, readout, mode }));
}
