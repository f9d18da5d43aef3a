import { randomUUID } from 'node:crypto';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { releaseFeedback } from '@/lib/data/assignments';
import { submitAttempt } from '@/lib/data/attempts';
import { writeComment } from '@/lib/data/comments';
import { db } from '@/lib/data/db';
import { getStudentReport } from '@/lib/data/student-report';
import { benchTemplates } from '@/lib/variants/bench/bench-labs';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  at,
  labPart,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
const tuesday = at('2026-12-01T09:00:00Z');
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const reportOn = async (clock = tuesday) => {
  const report = await getStudentReport(school.owner, school.ann.studentId, clock);
  if (report === null) throw new Error('no report');
  return report;
};

async function handIn(
  viewer: School['ann'],
  assignmentId: string,
  skill: 'best' | 'poor' = 'best',
): Promise<string> {
  const attemptId = await started(viewer, assignmentId);
  const submission = await answerFor(attemptId, skill);
  const sent = { submission, idempotencyKey: `key-${attemptId}` };
  valueOf(await submitAttempt(viewer, attemptId, sent, monday));
  return attemptId;
}

async function seenOutside(observedAt: string, change: { level?: number; gone?: boolean } = {}) {
  await db().observation.create({
    data: {
      studentId: school.ann.studentId,
      skill: 'level',
      level: change.level ?? 4,
      gates: [],
      instrument: 'wren',
      note: 'a word for teachers',
      prompts: 0,
      conditions: { light: 'night', cloud: 'clear' },
      key: randomUUID().replaceAll('-', ''),
      assessorId: school.owner.teacherId,
      observedAt: new Date(observedAt),
      receivedAt: new Date(observedAt),
      retractedAt: change.gone === true ? new Date(observedAt) : null,
    },
  });
}

describe('a page about one student', () => {
  test('is for everybody who may see the class, and for nobody else', async () => {
    const { owner, colleague, observer, stranger, ann, ben, dee, anonymous } = school;
    for (const viewer of [owner, colleague, observer]) {
      const report = await getStudentReport(viewer, ann.studentId, tuesday);
      expect(report?.student.displayName).toBe('Ann');
    }
    for (const viewer of [stranger, ann, ben, dee, anonymous]) {
      expect(await getStudentReport(viewer, ann.studentId, tuesday)).toBeNull();
    }
    expect(await getStudentReport(owner, 'nobody', tuesday)).toBeNull();
    expect(await getStudentReport(owner, dee.studentId, tuesday)).toBeNull();
  });

  describe('with work handed in', () => {
    let assignmentId: string;
    beforeEach(async () => {
      await db().assignment.deleteMany({});
      await db().observation.deleteMany({});
    });

    test('tells mark, state, comments and what to do next', async () => {
      assignmentId = await published(school);
      const attemptId = await handIn(school.ann, assignmentId);
      const text = 'You looked twice before you chose. Keep that.';
      valueOf(await writeComment(school.owner, { attemptId, criterion: '', text }, tuesday));
      const { work, skills, nextSteps } = await reportOn();
      expect(work).toMatchObject([
        { title: 'Pick the pair', state: 'complete', comments: [{ text, by: 'owner' }] },
      ]);
      expect(work[0]?.mark).toBeGreaterThan(90);
      expect(skills.find(({ skill }) => skill === 'choose-stars')).toMatchObject({ inARow: 1 });
      // The first skill of an evening that is not mastered is what comes next.
      expect(nextSteps).toEqual([{ do: 'practise', skill: 'kit', toGo: 3 }]);
    });

    test('tells of missing work once it is due', async () => {
      await published(school);
      const { nextSteps } = await reportOn(afterDue(24));
      expect(nextSteps[0]).toEqual({ do: 'hand-in', title: 'Pick the pair' });
    });

    test('tells which part of the work is missing where another is handed in', async () => {
      const parts = [
        labPart('pick-the-pair', ['free-pair']),
        labPart('level', benchTemplates.level),
      ];
      assignmentId = await published(school, {}, monday, { parts });
      expect((await reportOn(afterDue(24))).work).toMatchObject([
        { state: 'missing', parts: 2, notHandedIn: ['pick-the-pair', 'level'] },
      ]);
      await handIn(school.ann, assignmentId);
      expect((await reportOn(afterDue(24))).work).toMatchObject([
        { state: 'missing', parts: 2, notHandedIn: ['level'] },
      ]);
    });

    test('tells nothing of a result that is withheld from the student', async () => {
      assignmentId = await published(school, { feedback: 'when-released' });
      const attemptId = await handIn(school.ann, assignmentId);
      const comment = { attemptId, criterion: '', text: 'Not to be read yet.' };
      valueOf(await writeComment(school.owner, comment, tuesday));
      const before = await reportOn();
      expect(before.work).toMatchObject([{ state: 'submitted', mark: null, comments: [] }]);
      expect(before.skills.every(({ pieces }) => pieces === 0)).toBe(true);
      valueOf(await releaseFeedback(school.owner, assignmentId, tuesday));
      const after = await reportOn();
      expect(after.work).toMatchObject([{ state: 'complete', comments: [{ by: 'owner' }] }]);
    });

    test('says nothing about others, of accommodations or of notes among teachers', async () => {
      assignmentId = await published(school);
      await handIn(school.ben, assignmentId);
      await db().accommodation.create({
        data: { studentId: school.ann.studentId, extraAttempts: 7, extraTime: 'untimed' },
      });
      await seenOutside('2026-11-20T20:00:00Z');
      const before = JSON.stringify(await reportOn());
      for (const word of ['Ben', school.ben.studentId, 'untimed', 'extra', 'a word for teachers']) {
        expect(before).not.toContain(word);
      }
      await db().attempt.deleteMany({ where: { studentId: school.ben.studentId } });
      await db().accommodation.deleteMany({});
      expect(JSON.stringify(await reportOn())).toBe(before);
    });
  });

  describe('of what was seen at the telescope', () => {
    const levelSeen = async () =>
      (await reportOn()).skills.find(({ skill }) => skill === 'level')?.seen;
    beforeEach(async () => {
      await db().observation.deleteMany({});
    });

    test('counts evenings, not notes, and none that was taken back', async () => {
      expect(await levelSeen()).toEqual({ evenings: 0, best: null, signedOff: false });
      await seenOutside('2026-11-20T20:00:00Z', { level: 3 });
      // After midnight it is still the same evening.
      await seenOutside('2026-11-21T00:30:00Z', { level: 4 });
      await seenOutside('2026-11-22T20:00:00Z', { gone: true });
      expect(await levelSeen()).toEqual({ evenings: 1, best: 4, signedOff: false });
    });

    // Two dated observations at the class's level (design, assessment: at least two dated observations).
    test('signs off on two evenings at the level that the class asks for', async () => {
      await seenOutside('2026-11-20T20:00:00Z', { level: 3 });
      await seenOutside('2026-11-24T20:00:00Z', { level: 3 });
      expect(await levelSeen()).toEqual({ evenings: 2, best: 3, signedOff: true });
      await db().class.update({ where: { id: school.classId }, data: { signOffLevel: 4 } });
      expect((await levelSeen())?.signedOff).toBe(false);
    });
  });
});
