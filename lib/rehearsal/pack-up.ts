import { edgesOf } from '../assembly/graph';
import { neededSteps, type AssemblyStep } from '../assembly/steps';

/** Taking down needs the same of every tube. */
const takingDown = { tubeType: 'refractor', kind: 'take-down' } as const;

/** What comes before and after the taking down of an evening that had power. */
export const poweredSteps = [
  'tube-level',
  'switch-off',
  'unplug-supply',
  'unplug-hand-control',
  'look-over-the-ground',
] as const;
export type PackUpStep = (typeof poweredSteps)[number] | AssemblyStep;

/** All that is done at the end of an evening, each once, in one order that is right. */
export const packUpSteps: readonly PackUpStep[] = [
  ...(['tube-level', 'switch-off', 'unplug-supply', 'unplug-hand-control'] as const),
  ...neededSteps(takingDown),
  'look-over-the-ground',
];

/** One thing before another. Common practice, no source. */
export type PackUpRule = {
  before: PackUpStep;
  after: PackUpStep;
  /** Somebody or the telescope comes to harm: a gate. */
  danger: boolean;
};

const powered: readonly PackUpRule[] = [
  // The motors bring the tube level while there is power.
  { before: 'tube-level', after: 'switch-off', danger: false },
  { before: 'switch-off', after: 'unplug-supply', danger: false },
  { before: 'switch-off', after: 'unplug-hand-control', danger: true },
  // No cable is left to pull at what is lifted, or to trip over.
  { before: 'unplug-supply', after: 'hold-tube', danger: false },
  { before: 'unplug-hand-control', after: 'hold-tube', danger: false },
  { before: 'tube-level', after: 'open-clamp', danger: false },
  { before: 'fold-legs', after: 'look-over-the-ground', danger: false },
];

/** Whose breaking lets the tube fall, or the stand go over with something on it. */
const dangerousAfter: ReadonlySet<PackUpStep> = new Set<PackUpStep>([
  'open-clamp',
  'unbolt-mount',
  'tray-out',
]);

const packUpRules: readonly PackUpRule[] = [
  ...powered,
  // The legs are no place to fold under what still stands on them.
  { before: 'mount-off', after: 'fold-legs', danger: true },
  ...edgesOf(takingDown).map((edge) => ({ ...edge, danger: dangerousAfter.has(edge.after) })),
];

export type PackedUp = {
  broken: readonly PackUpRule[];
  /** Never done. */
  missing: readonly PackUpStep[];
  /** Of all rules and steps, how many were kept and done; 0–1. */
  share: number;
};

/**
 * How a telescope was packed up: `steps` in the order in which they were done, each once. Any order that
 * keeps the rules is right. A rule whose later step was never done is neither kept nor broken.
 */
export function packedUp(steps: readonly PackUpStep[]): PackedUp {
  const place = (step: PackUpStep): number => {
    const at = steps.indexOf(step);
    return at < 0 ? Infinity : at;
  };
  const kept = packUpRules.filter(({ before, after }) => place(before) < place(after));
  const missing = packUpSteps.filter((step) => !steps.includes(step));
  const done = packUpSteps.length - missing.length;
  // With the later step done a rule that is not kept is broken.
  const keptWhole = kept.filter(({ after }) => steps.includes(after));
  return {
    broken: packUpRules
      .filter(({ before, after }) => place(after) < place(before))
      // With the supply out nothing is live any more, whatever the switch says.
      .map((rule) =>
        rule.after === 'unplug-hand-control' &&
        place('unplug-supply') < place('unplug-hand-control')
          ? { ...rule, danger: false }
          : rule,
      ),
    missing,
    share: (keptWhole.length + done) / (packUpRules.length + packUpSteps.length),
  };
}
