import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { course } from '@/lib/course/lessons';
import { db } from '@/lib/data/db';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { exportStudent } from '@/lib/data/roster';
import { storedItemSchema } from '@/lib/data/stored-item';
import { rightAnswer } from '@/lib/items/answers-to-try';
import { useSchoolDatabase } from '../support/school-database';
import { makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();
const fileSchema = z.object({
  questions: z.array(
    z.object({ lesson: z.string(), item: z.looseObject({}), answeredAt: z.date().nullable() }),
  ),
});

/** What only the other side of a question has; a match's face calls its second list "right". */
const telltale =
  /"(key|reason|misconception|rules|pairs|slips|explanation|afterwards)":|"right":(true|false)/;

describe('the file of a student', () => {
  let school: School;
  const questions = async () =>
    fileSchema.parse(await exportStudent(school.owner, school.ann.studentId)).questions;
  beforeAll(async () => {
    school = await makeSchool();
    for (const { slug } of course)
      valueOf(await nextQuestion(school.ann, { lesson: slug }, monday));
  });

  test('tells of an open question what the student sees, and nothing that answers it', async () => {
    const rows = await db().askedQuestion.findMany({ select: { item: true } });
    expect(rows.every(({ item }) => telltale.test(JSON.stringify(item)))).toBe(true);
    const inFile = await questions();
    expect(inFile).toHaveLength(course.length);
    for (const { item } of inFile) {
      expect(item).toHaveProperty('prompt');
      expect(JSON.stringify(item)).not.toMatch(telltale);
    }
  });

  test('holds a question whole once it is answered', async () => {
    const { id } = valueOf(await nextQuestion(school.ann, { lesson: 'level-enough' }, monday));
    const { item } = await db().askedQuestion.findUniqueOrThrow({ where: { id } });
    valueOf(
      await answerQuestion(school.ann, id, rightAnswer(storedItemSchema.parse(item)), monday),
    );
    const answered = (await questions()).filter(({ answeredAt }) => answeredAt !== null);
    expect(answered).toMatchObject([{ lesson: 'level-enough', item }]);
  });
});
