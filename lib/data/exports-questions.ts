import 'server-only';
import type { ExportedQuestion } from '../exports/question-statement';
import { itemBank } from '../items/item-bank';
import { capitalised } from '../wording/capital';
import { lessonName } from '../wording/lesson-name';
import { db } from './db';

/** The answered questions of lessons' practice of a class, by card and time. Internal: after authorising. */
export async function readExportedQuestions(
  classId: string,
  names: 'shown' | 'cards',
): Promise<ExportedQuestion[]> {
  const rows = await db().askedQuestion.findMany({
    where: { student: { classId }, answeredAt: { not: null }, mark: { not: null } },
    orderBy: [{ student: { cardNumber: 'asc' } }, { answeredAt: 'asc' }, { id: 'asc' }],
    select: {
      id: true,
      studentId: true,
      lesson: true,
      number: true,
      family: true,
      template: true,
      mark: true,
      graderVersion: true,
      answeredAt: true,
      student: { select: { displayName: true } },
    },
  });
  const titles = new Map(itemBank.map(({ id, title }) => [id, title]));
  return rows.flatMap(({ student, mark, answeredAt, ...row }) =>
    mark === null || answeredAt === null
      ? []
      : [
          {
            id: row.id,
            studentId: row.studentId,
            name: names === 'shown' ? student.displayName : '',
            lesson: row.lesson,
            lessonTitle: lessonName(row.lesson),
            family: row.family,
            familyTitle: titles.get(row.family) ?? capitalised(row.family.replaceAll('-', ' ')),
            template: row.template,
            number: row.number,
            graderVersion: row.graderVersion,
            mark,
            answeredAt,
          },
        ],
  );
}
