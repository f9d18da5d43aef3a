import { standAfter, type Stand } from '@/lib/assembly/stand';
import { assemblySteps, type AssemblyStep } from '@/lib/assembly/steps';
import { standWords } from '@/lib/drawings/draw-stand';
import { whyNotYet } from '@/lib/drawings/pack-up-graph';
import { packUpName } from '@/lib/drawings/pack-up-words';
import { packUpSteps, type PackUpStep } from '@/lib/rehearsal/pack-up';

const isAssembly = (step: PackUpStep): step is AssemblyStep =>
  assemblySteps.some((one) => one === step);

export const standOf = (done: readonly PackUpStep[]): Stand =>
  standAfter(done.filter(isAssembly), 'built');

export const leadsOf = (done: readonly PackUpStep[]) => ({
  on: !done.includes('switch-off'),
  supply: !done.includes('unplug-supply'),
  handControl: !done.includes('unplug-hand-control'),
});

/** The evening is over for a telescope that fell. */
export const isOver = (done: readonly PackUpStep[]): boolean => {
  const { tube, tipped } = standOf(done);
  return tube === 'fallen' || tipped;
};

export type Packing = {
  done: readonly PackUpStep[];
  /** What was tried last and could not be done yet; null: nothing. */
  refused: PackUpStep | null;
};
export const packingAtStart: Packing = { done: [], refused: null };

/** A step taken. One that comes too early is refused, save where it brings something down. */
export function takeStep({ done }: Packing, step: PackUpStep): Packing {
  const after = [...done, step];
  return whyNotYet(step, done) === null || isOver(after)
    ? { done: after, refused: null }
    : { done, refused: step };
}

/** What the last step did, or why one could not be done yet. */
export function packWords({ done, refused }: Packing): string {
  const stands = standWords(standOf(done));
  if (refused !== null)
    return `Not yet: ${packUpName(refused).toLowerCase()}. Why: ${whyNotYet(refused, done) ?? ''}`;
  const last = done.at(-1);
  if (last === undefined) return `${stands} The power is on. What do you do first?`;
  const early = whyNotYet(last, done.slice(0, -1));
  const told = early === null ? '' : ` That was too early: ${early}`;
  const end =
    done.length === packUpSteps.length && !isOver(done)
      ? ' All is packed up and nothing lies in the grass.'
      : '';
  return `${packUpName(last)}.${told} ${stands}${end}`;
}
