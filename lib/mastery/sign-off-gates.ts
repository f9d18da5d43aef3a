import type { Skill } from '../course/skills';

/**
 * Points of safety at the real telescope that no level makes up for: those of the labs (lib/grading), as
 * far as a teacher can see them, and two that only hands can show. `rule` is what must hold, `failed`
 * names it on the card.
 */
export const gateText = {
  'cap-off-early': { rule: 'Caps on until the Sun has set', failed: 'cap off before sunset' },
  'tube-let-go': {
    rule: 'A hand on the tube before the clamp opens',
    failed: 'tube let go in an open clamp',
  },
  'leg-left-open': {
    rule: 'Every leg locked before anything goes on top',
    failed: 'leg left unlocked',
  },
  'lifted-alone': { rule: 'Two people at every heavy lift', failed: 'mount lifted alone' },
  'fingers-in-legs': {
    rule: 'Fingers clear of the folding legs',
    failed: 'fingers in the folding legs',
  },
  'control-pulled-live': {
    rule: 'Hand control in and out with the power off',
    failed: 'hand control pulled live',
  },
  'wrong-supply': {
    rule: 'Batteries of the right voltage, the right way round; mains is the teacher’s',
    failed: 'wrong or reversed supply, or mains outdoors',
  },
  'unsafe-in-the-dark': {
    rule: 'Walks, with a red light, clear of legs and cables',
    failed: 'ran or stumbled about in the dark',
  },
} as const satisfies Record<string, { rule: string; failed: string }>;

export type GateId = keyof typeof gateText;

export const gateIds = [
  'cap-off-early',
  'tube-let-go',
  'leg-left-open',
  'lifted-alone',
  'fingers-in-legs',
  'control-pulled-live',
  'wrong-supply',
  'unsafe-in-the-dark',
] as const satisfies readonly GateId[];

/** What can go wrong while a skill is shown; in safety, all of it. */
export const gatesOfSkill: Readonly<Record<Skill, readonly GateId[]>> = {
  kit: ['cap-off-early'],
  assemble: ['leg-left-open', 'tube-let-go', 'lifted-alone', 'fingers-in-legs'],
  level: ['leg-left-open', 'fingers-in-legs'],
  balance: ['tube-let-go'],
  field: ['cap-off-early'],
  finder: ['cap-off-early'],
  power: ['wrong-supply', 'control-pulled-live'],
  'clock-and-place': [],
  'choose-stars': [],
  align: ['cap-off-early'],
  diagnose: ['tube-let-go', 'control-pulled-live'],
  safety: gateIds,
};

/** "tube let go in an open clamp, mount lifted alone"; null when none failed. */
export const failedGatesText = (gates: readonly GateId[]): string | null =>
  gates.length === 0 ? null : gates.map((gate) => gateText[gate].failed).join(', ');

/** The letter of each of a skill's gates on the paper form, and when it is typed in: a, b, c … */
export const gateLetter = (index: number): string => String.fromCharCode(97 + index);
