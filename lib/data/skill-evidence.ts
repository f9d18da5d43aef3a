import 'server-only';
import { z } from 'zod';
import { skills } from '../course/skills';
import { practicePassMark, type Evidence } from '../mastery/evidence';
import { db } from './db';

const skillSchema = z.enum(skills);

/** All evidence that the student may know of. */
export async function shownEvidence(studentId: string, now: Date): Promise<Evidence[]> {
  const questions = await db().askedQuestion.findMany({
    where: { studentId, answeredAt: { not: null, lte: now } },
    orderBy: { answeredAt: 'asc' },
    select: { skill: true, family: true, template: true, mark: true, answeredAt: true },
  });
  return questions.flatMap(({ skill, family, template, mark, answeredAt }) =>
    mark === null || answeredAt === null
      ? []
      : [
          {
            ...{ skill: skillSchema.parse(skill), template: `${family}/${template}`, mark },
            ...{ passMark: practicePassMark, gateFailed: false, at: answeredAt },
          },
        ],
  );
}
