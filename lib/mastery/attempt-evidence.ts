import type { Skill } from '../course/skills';
import type { Lab } from '../variants/labs';
import { passes, practicePassMark, type Evidence } from './evidence';
import { labsWithGates, skillsOfLab } from './lab-skills';

/** A lab handed in and marked, as far as skills go. */
export type MarkedWork = {
  template: string;
  /** 0–100, not rounded, before any deduction for lateness: it tells what somebody can, not when. */
  total: number;
  passMark: number;
  gateFailed: boolean;
  at: Date;
} & (
  | { lab: Exclude<Lab, 'dress-rehearsal' | 'lesson-questions'> }
  | { lab: 'dress-rehearsal'; skills: readonly { skill: Skill; shown: boolean }[] }
  | { lab: 'lesson-questions'; items: readonly AnsweredItem[] }
);
type AnsweredItem = { family: string; template: string; skill: Skill; mark: number };

/** What a piece was read from: the mark, the gates, what a rehearsal showed, one question of several. */
export type ReadFrom = 'mark' | 'gates' | 'rehearsal' | 'item';
export type WorkEvidence = Evidence & { from: ReadFrom };

/** Something that is either so or not: 100 or 0, and nothing less passes. */
const soOrNot = (so: boolean) => ({ mark: so ? 100 : 0, passMark: 100 });

/**
 * What one attempt tells of each skill.
 *
 * Safety: a gate that failed tells against it, whatever else was done. Work that passed without one tells
 * for it. Work that passed nothing and failed no gate tells nothing: nobody shows care by doing nothing.
 * The dress rehearsal judges that, as each skill, itself.
 */
export function evidenceOf(work: MarkedWork): WorkEvidence[] {
  const { at, passMark, gateFailed } = work;
  const template = `${work.lab}/${work.template}`;
  switch (work.lab) {
    case 'dress-rehearsal':
      return work.skills.map(({ skill, shown }) => ({
        skill,
        template,
        ...soOrNot(shown),
        at,
        from: 'rehearsal',
        gateFailed: skill === 'safety' && gateFailed,
      }));
    case 'lesson-questions':
      return work.items.map(({ family, template: kind, skill, mark }) => ({
        skill,
        template: `${family}/${kind}`,
        mark,
        gateFailed: false,
        at,
        // The assignment's pass mark is for the whole set; one question is judged as in practice.
        passMark: practicePassMark,
        from: 'item',
      }));
    default: {
      const { lab, total } = work;
      const byMark = skillsOfLab[lab].map((skill) => ({
        skill,
        template,
        mark: total,
        passMark,
        gateFailed,
        at,
        from: 'mark' as const,
      }));
      const tells = gateFailed || passes({ mark: total, passMark, gateFailed });
      if (!labsWithGates.includes(lab) || !tells) return byMark;
      const safety = { template, ...soOrNot(!gateFailed), gateFailed, at, from: 'gates' as const };
      return [...byMark, { skill: 'safety', ...safety }];
    }
  }
}
