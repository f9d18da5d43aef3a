/** What is done at the end of an evening, each once. */
export const packUpSteps = [
  'bring-the-tube-level',
  'switch-off',
  'unplug-the-supply',
  'unplug-the-hand-control',
  'take-out-the-eyepiece',
  'put-the-caps-on',
  'lift-the-tube-off',
  'take-the-mount-off',
  'fold-the-tripod',
  'look-over-the-ground',
] as const;
export type PackUpStep = (typeof packUpSteps)[number];

/** One thing before another, and what would happen else. Common practice, no source. */
export type PackUpRule = {
  first: PackUpStep;
  then: PackUpStep;
  why:
    | 'the-motors-bring-it'
    | 'never-under-power'
    | 'cable-in-the-way'
    | 'falls-out'
    | 'bare-glass'
    | 'tube-on-it'
    | 'mount-on-it'
    | 'last-of-all';
  /** Somebody or the telescope can come to harm: a gate. */
  danger: boolean;
};

export const packUpRules: readonly PackUpRule[] = [
  {
    ...{ first: 'bring-the-tube-level', then: 'switch-off' },
    ...{ why: 'the-motors-bring-it', danger: false },
  },
  {
    ...{ first: 'switch-off', then: 'unplug-the-supply' },
    ...{ why: 'never-under-power', danger: false },
  },
  {
    ...{ first: 'switch-off', then: 'unplug-the-hand-control' },
    ...{ why: 'never-under-power', danger: true },
  },
  {
    ...{ first: 'unplug-the-supply', then: 'lift-the-tube-off' },
    ...{ why: 'cable-in-the-way', danger: false },
  },
  {
    ...{ first: 'take-out-the-eyepiece', then: 'lift-the-tube-off' },
    ...{ why: 'falls-out', danger: false },
  },
  {
    ...{ first: 'put-the-caps-on', then: 'lift-the-tube-off' },
    ...{ why: 'bare-glass', danger: false },
  },
  {
    ...{ first: 'lift-the-tube-off', then: 'take-the-mount-off' },
    ...{ why: 'tube-on-it', danger: true },
  },
  {
    ...{ first: 'take-the-mount-off', then: 'fold-the-tripod' },
    ...{ why: 'mount-on-it', danger: true },
  },
  {
    ...{ first: 'fold-the-tripod', then: 'look-over-the-ground' },
    ...{ why: 'last-of-all', danger: false },
  },
];

export type PackedUp = {
  broken: readonly PackUpRule[];
  /** Never done. */
  missing: readonly PackUpStep[];
  /** Of all rules and steps, how many were kept and done; 0–1. */
  share: number;
};

/**
 * How a telescope was packed up: `steps` in the order in which they were done. Any order that keeps the
 * rules is right. A rule of which neither step was done is not kept and breaks nothing.
 */
export function packedUp(steps: readonly PackUpStep[]): PackedUp {
  const place = (step: PackUpStep): number => {
    const at = steps.indexOf(step);
    return at < 0 ? Infinity : at;
  };
  const kept = packUpRules.filter(({ first, then }) => place(first) < place(then));
  const broken = packUpRules.filter(({ first, then }) => place(then) < place(first));
  const missing = packUpSteps.filter((step) => !steps.includes(step));
  const done = packUpSteps.length - missing.length;
  return {
    broken,
    missing,
    share: (kept.length + done) / (packUpRules.length + packUpSteps.length),
  };
}

/** The order of whoever packs up as the rules have it. */
export const packedUpRightly: readonly PackUpStep[] = packUpSteps;
