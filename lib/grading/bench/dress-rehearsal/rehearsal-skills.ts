import type { RunResult } from '../../run-result';
import {
  rehearsedSkills,
  type DressRehearsalCriterion,
  type DressRehearsalGate,
  type DressRehearsalResult,
  type RehearsedSkill,
} from './dress-rehearsal-result';

/** From this share of a stage's marks on, its skill was shown. Design, "Marks". */
const shownFrom = 0.7;

const stageOf: Readonly<
  Record<Exclude<RehearsedSkill, 'diagnose' | 'safety'>, DressRehearsalCriterion>
> = {
  kit: 'put-it-together',
  assemble: 'put-it-together',
  level: 'level',
  balance: 'balance',
  finder: 'finder',
  power: 'power',
  'clock-and-place': 'clock-and-place',
  'choose-stars': 'pick-the-pair',
  align: 'alignment-run',
};

/**
 * The skills that an evening gives evidence of. A gate that failed takes its stage's skill with it;
 * safety is shown by a whole evening without one, packed up in the end.
 */
export function skillsShown({
  shares,
  gates,
  run,
}: {
  shares: Readonly<Record<DressRehearsalCriterion, number | null>>;
  gates: readonly DressRehearsalGate[];
  run: RunResult | null;
}): DressRehearsalResult['skills'] {
  const shown = (skill: RehearsedSkill): boolean => {
    if (skill === 'safety') {
      return gates.length === 0 && Object.values(shares).every((share) => share !== null);
    }
    if (skill === 'diagnose') {
      const judgement = run?.criteria.find(({ id }) => id === 'judgement');
      // Whoever checked on no third star has not looked whether it was right.
      return judgement !== undefined && judgement.earned > 0 && run?.third !== null;
    }
    const stage = stageOf[skill];
    return (shares[stage] ?? 0) >= shownFrom && gates.every(({ id }) => id !== stage);
  };
  return rehearsedSkills.map((skill) => ({ skill, shown: shown(skill) }));
}
