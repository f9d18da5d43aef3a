import { beforeAll, describe, expect, test } from 'vitest';
import { frozenTask } from '@/lib/data/attempt-making';
import {
  getAttemptResult,
  getOpenAttempt,
  listStudentAssignments,
  saveDraft,
  startPractice,
  submitAttempt,
} from '@/lib/data/attempts';
import { releaseFeedback, updateAssignment } from '@/lib/data/assignments';
import { db } from '@/lib/data/db';
import { extendDue } from '@/lib/data/gradebook';
import { setExtraAttempts } from '@/lib/data/roster';
import { pairVariantSchema } from '@/lib/data/lab-tasks/stored-pair';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  assignmentInput,
  codeOf,
  dueAt,
  makeSchool,
  monday,
  published,
  startPart,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const key = (name: string) => `idempotency-${name}`;
const none = { kind: 'none-usable' } as const;

async function submitted(attemptId: string, clock = monday) {
  const submission = await answerFor(attemptId, 'best');
  return valueOf(
    await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: key(attemptId) },
      clock,
    ),
  );
}

describe('starting', () => {
  test('the same start again resumes the open attempt, also when both come together', async () => {
    const assignmentId = await published(school);
    const [one, two] = await Promise.all([
      startPart(school.ann, assignmentId, monday),
      startPart(school.ann, assignmentId, monday),
    ]);
    expect(valueOf(one)).toEqual(valueOf(two));
    expect(await db().attempt.count({ where: { assignmentId } })).toBe(1);
  });

  test('an attempt over the limit is refused and uses nothing up; extra attempts open one more', async () => {
    const assignmentId = await published(school, { attemptsAllowed: 1 });
    await submitted(await started(school.ann, assignmentId));
    expect(codeOf(await startPart(school.ann, assignmentId, monday))).toBe('no-attempts-left');
    expect(await db().attempt.count({ where: { assignmentId } })).toBe(1);
    valueOf(await setExtraAttempts(school.owner, school.ann.studentId, 1));
    expect(codeOf(await startPart(school.ann, assignmentId, monday))).toBe('ok');
    valueOf(await setExtraAttempts(school.owner, school.ann.studentId, 0));
  });

  test('after the due time nothing starts, but what is open goes on; an extension opens it again', async () => {
    const assignmentId = await published(school);
    const open = await started(school.ann, assignmentId);
    expect(codeOf(await startPart(school.ben, assignmentId, afterDue(0.01)))).toBe(
      'too-late-to-start',
    );
    expect(valueOf(await startPart(school.ann, assignmentId, afterDue(1))).attemptId).toBe(open);
    const later = afterDue(48).now().toISOString();
    const decision = {
      studentId: school.ben.studentId,
      assignmentId,
      dueAt: later,
      note: 'Was ill.',
    };
    valueOf(await extendDue(school.owner, decision));
    expect(codeOf(await startPart(school.ben, assignmentId, afterDue(47)))).toBe('ok');
  });

  test('two students get seeds of their own, and a stored seed makes the stored variant again', async () => {
    const assignmentId = await published(school);
    const ids = await Promise.all([
      started(school.ann, assignmentId),
      started(school.ben, assignmentId),
    ]);
    const rows = await db().attempt.findMany({
      where: { id: { in: ids } },
      select: {
        seed: true,
        variant: true,
        graderVersion: true,
        catalogueVersion: true,
        zoneRulesVersion: true,
      },
    });
    expect(new Set(rows.map(({ seed }) => seed)).size).toBe(2);
    // Seeds are random, so two students may chance on the same minute; the seed alone decides.
    const { scenario, kitId, parts } = assignmentInput();
    const { templates = [], windowMinutes = 0 } = parts[0] ?? {};
    for (const { seed, variant } of rows) {
      const again = frozenTask({
        lab: 'pick-the-pair',
        seed,
        scenario,
        kitId,
        templates,
        templatesSeen: [],
        windowMinutes,
        minutesAllowed: null,
        mayPause: false,
      });
      // The database's JSON keeps 16 digits of the frame's numbers, so what decides is compared.
      const stored = pairVariantSchema.parse(variant);
      const decided = ({ template, scenario: at, frame, givenHip, proposals }: typeof stored) => ({
        template,
        givenHip,
        proposals,
        scenario: at,
        instant: frame.instant,
      });
      if (again.lab !== 'pick-the-pair') throw new Error('a task of another lab');
      expect(decided(again.variant)).toEqual(decided(stored));
    }
    expect(rows[0]?.seed).toMatch(/^[0-9a-f]{64}$/);
    expect(rows[0]?.zoneRulesVersion).toMatch(/^20\d\d[a-z]/);
  });

  test('changing the assignment leaves what is under way as it was', async () => {
    const assignmentId = await published(school, { passMark: 70 });
    const attemptId = await started(school.ann, assignmentId);
    const before = await getOpenAttempt(school.ann, attemptId);
    const changed = assignmentInput({ passMark: 90, attemptsAllowed: 5 });
    const scenario = { ...changed.scenario, localTime: '2027-03-01T21:00' };
    const answer = await updateAssignment(school.owner, assignmentId, { ...changed, scenario });
    expect(valueOf(answer)).toEqual({ attemptsUnderWay: 1 });
    expect(await getOpenAttempt(school.ann, attemptId)).toEqual(before);
    await submitted(attemptId);
    expect((await getAttemptResult(school.ann, attemptId, monday))?.passMark).toBe(70);
    // The next one follows the change.
    const next = await getOpenAttempt(school.ann, await started(school.ann, assignmentId));
    expect(next?.attemptsAllowed).toBe(5);
    expect(next?.variant).toMatchObject({
      frame: { instant: expect.stringContaining('2027-03-01') as string },
    });
  });
});

describe('drafts', () => {
  const draft = (saysNone: boolean, hip?: number) => ({
    picks: hip === undefined ? [] : [{ hip, lookAlike: null }],
    saysNone,
    proposalIndex: 0,
  });

  test('an interrupted attempt resumes where its last draft was', async () => {
    const attemptId = await started(school.ann, await published(school));
    expect((await getOpenAttempt(school.ann, attemptId))?.nextSequence).toBe(1);
    valueOf(
      await saveDraft(school.ann, attemptId, { sequence: 1, draft: draft(false, 91262) }, monday),
    );
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 4, draft: draft(true) }, monday));
    const resumed = await getOpenAttempt(school.ann, attemptId);
    expect(resumed?.draft).toEqual(draft(true));
    expect(resumed?.nextSequence).toBe(5);
    expect(resumed).not.toHaveProperty('answerKey');
    const events = await db().event.findMany({
      where: { attemptId },
      orderBy: { sequence: 'asc' },
    });
    expect(events.map(({ sequence }) => sequence)).toEqual([0, 1, 4]);
  });

  test('saving the same twice is harmless; an older save of something else is refused', async () => {
    const attemptId = await started(school.ann, await published(school));
    const first = { sequence: 1, draft: draft(true) };
    valueOf(await saveDraft(school.ann, attemptId, first, monday));
    expect(await saveDraft(school.ann, attemptId, first, monday)).toEqual({
      ok: true,
      value: { sequence: 1 },
    });
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 2, draft: draft(false) }, monday));
    const stale = { sequence: 1, draft: draft(false, 91262) };
    expect(codeOf(await saveDraft(school.ann, attemptId, stale, monday))).toBe('changed-meanwhile');
    expect((await getOpenAttempt(school.ann, attemptId))?.draft).toEqual(draft(false));
  });

  test('what does not read is refused, and the attempt stays as it was', async () => {
    const attemptId = await started(school.ann, await published(school));
    for (const bad of [
      null,
      {},
      { sequence: 0, draft: draft(true) },
      { sequence: 1, draft: { picks: 'all' } },
    ]) {
      expect(codeOf(await saveDraft(school.ann, attemptId, bad, monday))).toBe('bad-input');
    }
    expect((await getOpenAttempt(school.ann, attemptId))?.nextSequence).toBe(1);
  });
});

describe('submitting', () => {
  test('the best pair of the answer key earns full marks, computed here', async () => {
    const attemptId = await started(school.ann, await published(school));
    const { result, late } = await submitted(attemptId);
    expect(result?.total).toBeCloseTo(100, 6);
    expect(late).toBe(false);
    const shown = await getAttemptResult(school.ann, attemptId, monday);
    expect(shown?.result).toEqual(result);
    expect(shown?.mark).toBeCloseTo(100, 6);
  });

  test('the same key again gives the first answer, whatever comes with it', async () => {
    const attemptId = await started(school.ann, await published(school));
    const first = await submitted(attemptId);
    const again = await submitAttempt(
      school.ann,
      attemptId,
      { submission: none, idempotencyKey: key(attemptId) },
      afterDue(30),
    );
    expect(valueOf(again)).toEqual(first);
    expect(
      codeOf(
        await submitAttempt(
          school.ann,
          attemptId,
          { submission: none, idempotencyKey: key('other') },
          monday,
        ),
      ),
    ).toBe('already-submitted');
    expect(await db().mark.count({ where: { attemptId } })).toBe(1);
  });

  test('ten arrivals of one submission at once count once', async () => {
    const attemptId = await started(school.ann, await published(school));
    const submission = await answerFor(attemptId, 'best');
    const answers = await Promise.all(
      Array.from({ length: 10 }, () =>
        submitAttempt(school.ann, attemptId, { submission, idempotencyKey: key('same') }, monday),
      ),
    );
    const [first, ...others] = answers.map(valueOf);
    for (const other of others) expect(other).toEqual(first);
    expect(await db().mark.count({ where: { attemptId } })).toBe(1);
    expect(await db().event.count({ where: { attemptId, kind: 'submitted' } })).toBe(1);
  });

  test('two different answers at once: one counts, the other is told so', async () => {
    const attemptId = await started(school.ann, await published(school));
    const submission = await answerFor(attemptId, 'best');
    const answers = await Promise.all([
      submitAttempt(school.ann, attemptId, { submission, idempotencyKey: key('one') }, monday),
      submitAttempt(
        school.ann,
        attemptId,
        { submission: none, idempotencyKey: key('two') },
        monday,
      ),
    ]);
    expect(answers.map(codeOf).toSorted()).toEqual(['already-submitted', 'ok']);
    expect(await db().mark.count({ where: { attemptId } })).toBe(1);
  });

  test.each([
    ['a score', { score: 100 }, 'score'],
    [
      'a mark inside the answer',
      { submission: { kind: 'none-usable', total: 100 } },
      'submission.total',
    ],
    ['a variant', { variant: {} }, 'variant'],
  ])('%s from outside is refused by name, and nothing is counted', async (_, extra, field) => {
    const attemptId = await started(school.ann, await published(school));
    const answer = await submitAttempt(
      school.ann,
      attemptId,
      { submission: none, idempotencyKey: key('tampered'), ...extra },
      monday,
    );
    expect(answer).toMatchObject({ ok: false, problem: { code: 'unexpected-field', field } });
    expect((await getOpenAttempt(school.ann, attemptId))?.id).toBe(attemptId);
    expect(await db().mark.count({ where: { attemptId } })).toBe(0);
  });

  test.each([
    ['a star that is not in the sky', [{ hip: 999_999 }, { hip: 91_262 }], 'not-in-this-sky'],
    ['the same star twice', null, 'same-star-twice'],
  ])('%s uses nothing up', async (_, stars, code) => {
    const assignmentId = await published(school, { attemptsAllowed: 1 });
    const attemptId = await started(school.ann, assignmentId);
    const best = await answerFor(attemptId, 'best');
    if (best.kind !== 'pair') throw new Error('this evening has a pair');
    const chosen = stars ?? [best.stars[0], best.stars[0]];
    const submission = { kind: 'pair', stars: chosen.map(({ hip }) => ({ hip, lookAlike: null })) };
    const refused = await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: key('x') },
      monday,
    );
    expect(codeOf(refused)).toBe(code);
    expect(await getOpenAttempt(school.ann, attemptId)).not.toBeNull();
    // The very same attempt, with the same key, still counts in full.
    const counted = await submitAttempt(
      school.ann,
      attemptId,
      { submission: best, idempotencyKey: key('x') },
      monday,
    );
    expect(valueOf(counted).result?.total).toBeCloseTo(100, 6);
  });

  test('after submission a draft changes nothing', async () => {
    const attemptId = await started(school.ann, await published(school));
    await submitted(attemptId);
    const draft = { picks: [], saysNone: true, proposalIndex: 0 };
    expect(codeOf(await saveDraft(school.ann, attemptId, { sequence: 9, draft }, monday))).toBe(
      'already-submitted',
    );
  });
});

describe('lateness', () => {
  test.each([
    [0.2, false, 0],
    [1, true, 0.1],
    [25, true, 0.2],
    [500, true, 0.5],
  ])(
    'submitted %f h after the due time: late %s, %f of the mark goes',
    async (hours, late, share) => {
      const attemptId = await started(school.ann, await published(school));
      const answer = await submitted(attemptId, afterDue(hours));
      expect(answer.late).toBe(late);
      const result = await getAttemptResult(school.ann, attemptId, afterDue(hours));
      expect(result?.latePenalty).toBeCloseTo(share, 12);
      expect(result?.result?.total).toBeCloseTo(100, 6);
      expect(result?.mark).toBeCloseTo(100 * (1 - share), 6);
    },
  );

  test('an extension given afterwards takes the penalty back', async () => {
    const assignmentId = await published(school);
    const attemptId = await started(school.ann, assignmentId);
    await submitted(attemptId, afterDue(25));
    const later = afterDue(72).now().toISOString();
    valueOf(
      await extendDue(school.owner, {
        studentId: school.ann.studentId,
        assignmentId,
        dueAt: later,
        note: 'Ill.',
      }),
    );
    const result = await getAttemptResult(school.ann, attemptId, afterDue(26));
    expect(result).toMatchObject({ late: false, latePenalty: 0 });
  });
});

describe('feedback', () => {
  test('after the due time: the student sees nothing before it, the teacher sees it at once', async () => {
    const assignmentId = await published(school, { feedback: 'after-due' });
    const attemptId = await started(school.ann, assignmentId);
    expect((await submitted(attemptId)).result).toBeNull();
    const before = await getAttemptResult(school.ann, attemptId, monday);
    expect(before).toMatchObject({ result: null, mark: null, feedbackVisibleFrom: dueAt });
    const [listed] = (await listStudentAssignments(school.ann, monday)).filter(
      (item) => item.assignmentId === assignmentId,
    );
    expect(listed).toMatchObject({ state: 'submitted', mark: null, feedbackVisible: false });
    expect((await getAttemptResult(school.owner, attemptId, monday))?.mark).toBeCloseTo(100, 6);
    const after = await getAttemptResult(school.ann, attemptId, afterDue(0.01));
    expect(after?.mark).toBeCloseTo(100, 6);
    const [later] = (await listStudentAssignments(school.ann, afterDue(0.01))).filter(
      (item) => item.assignmentId === assignmentId,
    );
    expect(later).toMatchObject({ state: 'complete', feedbackVisible: true });
  });

  test('when released: not before the word of the teacher', async () => {
    const assignmentId = await published(school, { feedback: 'when-released' });
    const attemptId = await started(school.ann, assignmentId);
    await submitted(attemptId);
    const waiting = await getAttemptResult(school.ann, attemptId, afterDue(900));
    expect(waiting).toMatchObject({ result: null, feedbackVisibleFrom: 'when-released' });
    valueOf(await releaseFeedback(school.owner, assignmentId, monday));
    expect((await getAttemptResult(school.ann, attemptId, monday))?.mark).toBeCloseTo(100, 6);
  });
});

describe('practice', () => {
  test('a new variant each time, explained at once, never counted', async () => {
    const assignmentId = await published(school, { feedback: 'when-released' });
    const first = valueOf(await startPractice(school.cy, { assignmentId }, monday)).attemptId;
    const answer = await submitAttempt(
      school.cy,
      first,
      { submission: none, idempotencyKey: key('practice') },
      afterDue(999),
    );
    expect(valueOf(answer)).toMatchObject({ late: false, result: { lab: 'pick-the-pair' } });
    const second = valueOf(await startPractice(school.cy, { assignmentId }, monday)).attemptId;
    const seeds = await db().attempt.findMany({
      where: { id: { in: [first, second] } },
      select: { seed: true },
    });
    expect(new Set(seeds.map(({ seed }) => seed)).size).toBe(2);
    const [listed] = (await listStudentAssignments(school.cy, monday)).filter(
      (item) => item.assignmentId === assignmentId,
    );
    expect(listed).toMatchObject({ state: 'not-started', mark: null });
    expect(listed?.parts).toMatchObject([{ attemptsUsed: 0, mark: null }]);
  });

  test('a practice that was left lying goes when the next begins', async () => {
    const left = valueOf(await startPractice(school.cy, { kitId: 'owl' }, monday)).attemptId;
    const next = valueOf(await startPractice(school.cy, {}, monday)).attemptId;
    expect(await getOpenAttempt(school.cy, left)).toBeNull();
    expect((await getOpenAttempt(school.cy, next))?.mode).toBe('practice');
  });

  const practices = () =>
    db().attempt.findMany({
      where: { studentId: school.ben.studentId, mode: 'practice' },
      orderBy: { number: 'asc' },
      select: { id: true, number: true, status: true, assignmentId: true, kitId: true },
    });

  test.each([['an assignment’s sky'], ['tonight’s sky']])(
    'two starts at once under %s get the one attempt',
    async (sky) => {
      const before = (await practices()).filter(({ status }) => status === 'submitted').length;
      const assignmentId = await published(school);
      const input = sky === 'tonight’s sky' ? {} : { assignmentId };
      const [one, two] = await Promise.all([
        startPractice(school.ben, input, monday),
        startPractice(school.ben, input, monday),
      ]);
      expect(valueOf(one)).toEqual(valueOf(two));
      expect(await practices()).toHaveLength(before + 1);
      const { attemptId } = valueOf(one);
      expect((await getOpenAttempt(school.ben, attemptId))?.mode).toBe('practice');
    },
  );

  test('two starts at once with different kits: the later takes the place of the other', async () => {
    const answers = await Promise.all([
      startPractice(school.ben, { kitId: 'owl' }, monday),
      startPractice(school.ben, { kitId: 'heron' }, monday),
    ]);
    expect(answers.map(codeOf)).toEqual(['ok', 'ok']);
    const open = (await practices()).filter(({ status }) => status === 'open');
    expect(open).toHaveLength(1);
    expect(answers.map(valueOf).map(({ attemptId }) => attemptId)).toContain(open[0]?.id);
  });
});
