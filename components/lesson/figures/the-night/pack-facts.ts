import { standAfter, type Stand } from '@/lib/assembly/stand';
import { assemblySteps, type AssemblyStep } from '@/lib/assembly/steps';
import { standWords } from '@/lib/items/the-night/draw-stand';
import { whyNotYet } from '@/lib/items/the-night/pack-up-graph';
import { packUpName } from '@/lib/items/the-night/pack-up-words';
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

/** What the last step did, and whether it came too early. */
export function packWords(done: readonly PackUpStep[]): string {
  const last = done.at(-1);
  if (last === undefined)
    return `${standWords(standOf(done))} The power is on. What do you do first?`;
  const early = whyNotYet(last, done.slice(0, -1));
  const told = early === null ? '' : ` That was too early: ${early}`;
  const end =
    done.length === packUpSteps.length && !isOver(done)
      ? ' All is packed up and nothing lies in the grass.'
      : '';
  return `${packUpName(last)}.${told} ${standWords(standOf(done))}${end}`;
}
