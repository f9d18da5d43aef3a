import { beforeAll, describe, expect, test } from 'vitest';
import { longestLog, type RunAction } from '@/lib/alignment/run-log';
import {
  getAttemptResult,
  getOpenAttempt,
  listStudentAssignments,
  saveDraft,
  startPractice,
  submitAttempt,
} from '@/lib/data/attempts';
import { createAssignment, getAssignment, updateAssignment } from '@/lib/data/assignments';
import { db } from '@/lib/data/db';
import {
  exportGradebookCsv,
  getGradebook,
  getStudentRecord,
  overrideMark,
} from '@/lib/data/gradebook';
import { exportStudent, listRoster, setExtraTime } from '@/lib/data/roster';
import { sameJson } from '@/lib/data/same-json';
import type { Lab } from '@/lib/variants/labs';
import {
  benchTasks,
  faultTask,
  perfectRunOf,
  questionsTask,
  rightAnswerOf,
  rightAnswersOf,
  runTask,
  sunwardRunOf,
} from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  assignmentInput,
  codeOf,
  labPart,
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

const key = 'idempotency-key';
const labs = [
  ...benchTasks,
  { lab: 'alignment-run' as Lab, task: runTask, answer: perfectRunOf },
  { lab: 'what-went-wrong' as Lab, task: faultTask, answer: rightAnswerOf },
  { lab: 'lesson-questions' as Lab, task: questionsTask, answer: rightAnswersOf },
];
const setOf = (task: typeof runTask, change = {}) => published(school, change, monday, task);
const payloads = (attemptId: string) =>
  db().event.findMany({ where: { attemptId }, orderBy: { sequence: 'asc' } });

describe.each(labs)('$lab', ({ lab, task, answer }) => {
  test('an attempt opens without its answer, is answered, and full marks are computed here', async () => {
    const assignmentId = await setOf(task);
    const attemptId = await started(school.ann, assignmentId);
    const open = await getOpenAttempt(school.ann, attemptId);
    expect(open?.lab).toBe(lab);
    expect(open?.variant.lab).toBe(lab);
    expect(open).not.toHaveProperty('answerKey');
    const submission = await answer(attemptId);
    const sent = valueOf(
      await submitAttempt(school.ann, attemptId, { submission, idempotencyKey: key }, monday),
    );
    expect(sent.result?.lab).toBe(lab);
    expect(sent.result?.total).toBeGreaterThan(99);
    const shown = await getAttemptResult(school.ann, attemptId, monday);
    expect(shown?.lab).toBe(lab);
    expect(shown?.mark).toBeCloseTo(sent.result?.total ?? 0, 9);
    const again = await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: key },
      monday,
    );
    expect(valueOf(again).result).toEqual(shown?.result);

    const listed = (await listStudentAssignments(school.ann, monday)).find(
      (one) => one.assignmentId === assignmentId,
    );
    expect(listed).toMatchObject({ state: 'complete', parts: [{ lab, state: 'complete' }] });
    const record = await getStudentRecord(school.owner, school.ann.studentId, monday);
    expect(record?.attempts.find((one) => one.attemptId === attemptId)).toMatchObject({ lab });
    const cell = (await getGradebook(school.owner, school.classId, monday))?.cells.find(
      (one) => one.assignmentId === assignmentId && one.studentId === school.ann.studentId,
    );
    expect(cell?.state).toBe('complete');
  });

  test('nobody but its student works on it; the class’s teachers alone see it beside her', async () => {
    const attemptId = await started(school.ann, await setOf(task, { feedback: 'when-released' }));
    const submission = await answer(attemptId);
    const others = ['ben', 'dee', 'owner', 'colleague', 'stranger', 'anonymous'] as const;
    for (const who of others) {
      const viewer = school[who];
      expect(await getOpenAttempt(viewer, attemptId)).toBeNull();
      const draft = { sequence: 1, draft: {} };
      expect(codeOf(await saveDraft(viewer, attemptId, draft, monday))).toBe('not-found');
      const sent = { submission, idempotencyKey: key };
      expect(codeOf(await submitAttempt(viewer, attemptId, sent, monday))).toBe('not-found');
    }
    const sent = { submission, idempotencyKey: key };
    const { result } = valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    expect(result).toBeNull();
    expect((await getAttemptResult(school.ann, attemptId, monday))?.result).toBeNull();
    for (const who of ['owner', 'colleague', 'observer'] as const) {
      expect((await getAttemptResult(school[who], attemptId, monday))?.result?.lab).toBe(lab);
    }
    for (const who of ['ben', 'dee', 'stranger', 'anonymous'] as const) {
      expect(await getAttemptResult(school[who], attemptId, monday)).toBeNull();
    }
  });

  test('an answer of another lab, or one with a score, is refused and uses nothing up', async () => {
    const attemptId = await started(school.ann, await setOf(task, { attemptsAllowed: 1 }));
    const submission = await answer(attemptId);
    for (const [wrong, code] of [
      [{ kind: 'none-usable' }, 'unexpected-field'],
      [{ ...submission, total: 100 }, 'unexpected-field'],
      [{}, 'bad-input'],
    ] as const) {
      const sent = { submission: wrong, idempotencyKey: key };
      expect(codeOf(await submitAttempt(school.ann, attemptId, sent, monday))).toBe(code);
    }
    const sent = { submission, idempotencyKey: key };
    expect(codeOf(await submitAttempt(school.ann, attemptId, sent, monday))).toBe('ok');
  });

  test('ten arrivals of one answer at once count once', async () => {
    const attemptId = await started(school.ann, await setOf(task));
    const submission = await answer(attemptId);
    const answers = await Promise.all(
      Array.from({ length: 10 }, () =>
        submitAttempt(school.ann, attemptId, { submission, idempotencyKey: key }, monday),
      ),
    );
    const totals = answers.map((one) => valueOf(one).result?.total);
    expect(new Set(totals).size).toBe(1);
    expect(await db().mark.count({ where: { attemptId } })).toBe(1);
  });

  test('practice is made anew each time, of this lab, and never counts', async () => {
    const { attemptId } = valueOf(await startPractice(school.ben, { lab }, monday));
    const open = await getOpenAttempt(school.ben, attemptId);
    expect(open).toMatchObject({ lab, mode: 'practice' });
    const submission = await answer(attemptId);
    const sent = { submission, idempotencyKey: key };
    expect(valueOf(await submitAttempt(school.ben, attemptId, sent, monday)).late).toBe(false);
    const next = valueOf(await startPractice(school.ben, { lab }, monday)).attemptId;
    const other = await getOpenAttempt(school.ben, next);
    expect(other?.variant).not.toEqual(open?.variant);
  });

  test('under an assignment’s sky, practice is of its lab', async () => {
    const assignmentId = await setOf(task);
    const { attemptId } = valueOf(await startPractice(school.ben, { assignmentId }, monday));
    expect((await getOpenAttempt(school.ben, attemptId))?.lab).toBe(lab);
  });

  test.each(['dee', 'owner', 'anonymous'] as const)(
    '%s cannot start what is not theirs',
    async (who) => {
      const assignmentId = await setOf(task);
      expect(codeOf(await startPart(school[who], assignmentId, monday))).toBe('not-found');
      const practice = await startPractice(school[who], { assignmentId }, monday);
      expect(codeOf(practice)).toBe('not-found');
    },
  );
});

describe('a run’s log', () => {
  const openRun = async () => started(school.ann, await setOf(runTask));

  test('is kept as one draft, the latest, and once after submission', async () => {
    const attemptId = await openRun();
    const { log } = await perfectRunOf(attemptId);
    // A number of 17 digits, of which the database keeps 16.
    const start = { at: 0, do: 'set-start', azimuthDeg: 0.1 + 0.2, altitudeDeg: 0 };
    const less = { sequence: 1, draft: { log: [start] } };
    valueOf(await saveDraft(school.ann, attemptId, less, monday));
    const more = {
      sequence: 2,
      draft: { log: [start, { at: 9, do: 'focus', position: 1 / 3 }] },
    };
    valueOf(await saveDraft(school.ann, attemptId, more, monday));
    // Sent again, since no answer came.
    valueOf(await saveDraft(school.ann, attemptId, more, monday));
    expect((await payloads(attemptId)).map(({ sequence }) => sequence)).toEqual([0, 2]);
    const resumed = await getOpenAttempt(school.ann, attemptId);
    expect(resumed?.nextSequence).toBe(3);
    expect(sameJson(resumed?.draft, more.draft)).toBe(true);
    const stale = { sequence: 1, draft: { log: [] } };
    expect(codeOf(await saveDraft(school.ann, attemptId, stale, monday))).toBe('changed-meanwhile');
    expect((await getOpenAttempt(school.ann, attemptId))?.draft).toEqual(resumed?.draft);

    const sent = { submission: { log }, idempotencyKey: key };
    valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    const events = await payloads(attemptId);
    expect(events.map(({ kind }) => kind)).toEqual(['started', 'submitted']);
    expect(events.at(-1)?.payload).toEqual({});
    const { submission } = await db().attempt.findUniqueOrThrow({ where: { id: attemptId } });
    expect(submission).toMatchObject({ log: log.map(({ do: what }) => ({ do: what })) });
  });

  test('with as many actions as a log may hold, each at its longest, is kept', async () => {
    const attemptId = await openRun();
    const small = 1.2345678901234567e-100;
    const long = Array.from({ length: longestLog }, (_, index) => ({
      at: 1_000_000 + index,
      do: 'this-is-the-star',
      readings: { azimuthDeg: small, altitudeDeg: -small },
    }));
    const draft = { log: long };
    expect(JSON.stringify(draft).length).toBeGreaterThan(440_000);
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 1, draft }, monday));
    expect((await getOpenAttempt(school.ann, attemptId))?.nextSequence).toBe(2);
  });

  test('with more than that is no page’s: it is refused, and the one before stays', async () => {
    const attemptId = await openRun();
    const draft = { log: [{ at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 }] };
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 1, draft }, monday));
    const log = Array.from({ length: longestLog + 1 }, () => ({ at: 9, do: 'stop' }));
    const more = { sequence: 2, draft: { log } };
    expect(codeOf(await saveDraft(school.ann, attemptId, more, monday))).toBe('bad-input');
    expect(await getOpenAttempt(school.ann, attemptId)).toMatchObject({ draft, nextSequence: 2 });
    const sent = { submission: { log }, idempotencyKey: key };
    expect(codeOf(await submitAttempt(school.ann, attemptId, sent, monday))).toBe('bad-input');
  });

  const changed = (
    log: readonly RunAction[],
    change: (action: RunAction) => RunAction,
  ): RunAction[] => log.map(change);
  const tamperings: [string, (log: readonly RunAction[]) => RunAction[], string][] = [
    [
      'a reading that the moves do not lead to',
      (log) =>
        changed(log, (action) =>
          action.do === 'this-is-the-star'
            ? {
                ...action,
                readings: {
                  ...action.readings,
                  altitudeDeg: action.readings.altitudeDeg + 0.1,
                },
              }
            : action,
        ),
      'does-not-add-up',
    ],
    [
      'an arrival before it can be',
      (log) => {
        const goTo = log.findIndex((action) => action.do === 'go-to');
        const from = log[goTo]?.at ?? 0;
        return log.map((action, index) => (index > goTo ? { ...action, at: from + 1 } : action));
      },
      'does-not-add-up',
    ],
    ['the end left out', (log) => log.filter((action) => action.do !== 'judge'), 'not-finished'],
    [
      'a sky that stood still where it may not',
      (log) => [
        ...log.slice(0, 2),
        { at: log[1]?.at ?? 0, do: 'paused', waitedMs: 60_000 },
        ...log.slice(2),
      ],
      'does-not-add-up',
    ],
  ];

  test.each(tamperings)('with %s is refused, and nothing is lost', async (_, tamper, code) => {
    const attemptId = await openRun();
    const { log } = await perfectRunOf(attemptId);
    const draft = { log: [{ at: 0, do: 'set-start', azimuthDeg: 3, altitudeDeg: 0 }] };
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 1, draft }, monday));
    const sent = { submission: { log: tamper(log) }, idempotencyKey: key };
    expect(codeOf(await submitAttempt(school.ann, attemptId, sent, monday))).toBe(code);
    expect(await getOpenAttempt(school.ann, attemptId)).toMatchObject({ draft });
    expect(await db().mark.count({ where: { attemptId } })).toBe(0);
    const honest = { submission: { log }, idempotencyKey: key };
    const { result } = valueOf(await submitAttempt(school.ann, attemptId, honest, monday));
    expect(result?.total).toBeGreaterThan(99);
  });

  test('of a draft cannot hold a speed that no strip has', async () => {
    const attemptId = await openRun();
    const draft = { log: [{ at: 0, do: 'rockers', azimuth: 6, altitude: 0 }] };
    const refused = await saveDraft(school.ann, attemptId, { sequence: 1, draft }, monday);
    expect(codeOf(refused)).toBe('bad-input');
  });
});

describe('more time', () => {
  const timed = { parts: [labPart('alignment-run', ['own-choice'], { minutesAllowed: 20 })] };
  const timeOf = async (viewer: School['ann'], assignmentId: string) => {
    const open = await getOpenAttempt(viewer, await started(viewer, assignmentId));
    if (open?.lab !== 'alignment-run') throw new Error('this is no run');
    return { minutesAllowed: open.variant.minutesAllowed, mayPause: open.variant.mayPause };
  };

  test.each([
    ['none', 20, false],
    ['1.25', 25, true],
    ['1.5', 30, true],
    ['2', 40, true],
    ['untimed', null, true],
  ])('%s of 20 minutes is %s, and lets the sky be paused: %s', async (extra, minutes, mayPause) => {
    valueOf(await setExtraTime(school.owner, school.ben.studentId, extra));
    const assignmentId = await setOf(timed);
    expect(await timeOf(school.ben, assignmentId)).toEqual({ minutesAllowed: minutes, mayPause });
  });

  test('is frozen with the attempt, and practice may always pause', async () => {
    valueOf(await setExtraTime(school.owner, school.ben.studentId, '2'));
    const assignmentId = await setOf(timed);
    await started(school.ben, assignmentId);
    valueOf(await setExtraTime(school.owner, school.ben.studentId, 'none'));
    expect(await timeOf(school.ben, assignmentId)).toEqual({ minutesAllowed: 40, mayPause: true });
    const { attemptId } = valueOf(await startPractice(school.ben, { assignmentId }, monday));
    const practice = await getOpenAttempt(school.ben, attemptId);
    expect(practice?.variant).toMatchObject({ minutesAllowed: null, mayPause: true });
  });

  test('is the teachers’ business: an observer does not see it', async () => {
    valueOf(await setExtraTime(school.owner, school.ben.studentId, '1.5'));
    const seen = async (viewer: School['owner']) =>
      (await listRoster(viewer, school.classId))?.find(
        ({ studentId }) => studentId === school.ben.studentId,
      )?.extraTime;
    expect(await seen(school.colleague)).toBe('1.5');
    expect(await seen(school.observer)).toBe('none');
    const { studentId } = school.ben;
    expect(JSON.stringify(await exportStudent(school.owner, studentId))).not.toContain('extraTime');
    const chosen = await exportStudent(school.owner, studentId, { accommodations: true });
    expect(chosen).toMatchObject({ accommodation: { extraTime: '1.5' } });
  });

  test('that is none of those offered is refused', async () => {
    for (const wrong of ['3', 1.5, null, '']) {
      expect(codeOf(await setExtraTime(school.owner, school.ben.studentId, wrong))).toBe(
        'bad-input',
      );
    }
  });
});

describe('a failed safety gate', () => {
  const byDay = {
    ...runTask,
    scenario: { ...assignmentInput().scenario, localTime: '2026-06-15T13:00' },
  };
  const standing = async (assignmentId: string) => {
    const cell = (await getGradebook(school.owner, school.classId, monday))?.cells.find(
      (one) => one.assignmentId === assignmentId && one.studentId === school.ann.studentId,
    );
    const listed = (await listStudentAssignments(school.ann, monday)).find(
      (one) => one.assignmentId === assignmentId,
    );
    return { cell, listed };
  };

  test('is "not yet" where any mark passes, until a teacher sets the mark', async () => {
    const assignmentId = await setOf(byDay, { passMark: 0 });
    const attemptId = await started(school.ann, assignmentId);
    const sent = { submission: await sunwardRunOf(attemptId), idempotencyKey: key };
    const { result } = valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    const failed = { mark: result?.total, gateFailed: true, state: 'not-yet' };
    expect(result?.total).toBeGreaterThan(30);
    expect(await standing(assignmentId)).toMatchObject({ cell: failed, listed: failed });
    const csv = await exportGradebookCsv(school.owner, school.classId, monday);
    expect(csv?.split('\r\n').find((line) => line.includes(',Ann,'))).toMatch(
      /,[1-9][\d.]*,not yet passed(,|$)/,
    );

    const target = { studentId: school.ann.studentId, assignmentId };
    const word = { ...target, mark: 40, note: 'Shown at the telescope with the cap on.' };
    valueOf(await overrideMark(school.owner, word, monday));
    const passed = { mark: 40, gateFailed: false, state: 'complete' };
    expect(await standing(assignmentId)).toMatchObject({ cell: passed, listed: passed });
  });

  test('is not told before the result may be seen', async () => {
    const assignmentId = await setOf(byDay, { passMark: 0, feedback: 'when-released' });
    const attemptId = await started(school.ann, assignmentId);
    const sent = { submission: await sunwardRunOf(attemptId), idempotencyKey: key };
    valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    expect(await standing(assignmentId)).toMatchObject({
      cell: { gateFailed: true, state: 'not-yet' },
      listed: { mark: null, gateFailed: false, state: 'submitted' },
    });
  });
});

describe('setting a lab', () => {
  const timed = (lab: Lab, template: string, minutesAllowed: number) => ({
    parts: [labPart(lab, [template], { minutesAllowed })],
  });
  const save = (change: object) =>
    createAssignment(school.owner, school.classId, { ...assignmentInput(), ...change }, monday);

  test.each([
    [
      'a kind of task of another lab',
      { parts: [labPart('pick-the-pair', ['decoy'])] },
      'parts.0.templates',
    ],
    ['a lab that is none', { parts: [{ ...labPart('level', []), lab: 'sundial' }] }, 'parts.0.lab'],
    [
      'time in a lab where it cannot count',
      timed('pick-the-pair', 'free-pair', 20),
      'parts.0.minutesAllowed',
    ],
    ['no time to speak of', timed('alignment-run', 'own-choice', 1), 'parts.0.minutesAllowed'],
  ])('%s is refused by name', async (_, change, field) => {
    const refused = await save(change);
    expect(refused).toMatchObject({ ok: false, problem: { code: 'bad-input', field } });
  });

  test('is kept, can be changed until somebody starts, and leaves what is under way as it was', async () => {
    const assignmentId = await setOf(timed('alignment-run', 'own-choice', 15));
    expect((await getAssignment(school.owner, assignmentId))?.parts).toMatchObject([
      { lab: 'alignment-run', templates: ['own-choice'], minutesAllowed: 15 },
    ]);
    const attemptId = await started(school.ann, assignmentId);
    const input = { ...assignmentInput(), ...faultTask };
    expect(codeOf(await updateAssignment(school.owner, assignmentId, input))).toBe('part-has-work');
    expect((await getAssignment(school.owner, assignmentId))?.version).toBe(2);
    const both = {
      ...input,
      parts: [...timed('alignment-run', 'decoy', 30).parts, ...input.parts],
    };
    valueOf(await updateAssignment(school.owner, assignmentId, both));
    expect((await getAssignment(school.owner, assignmentId))?.parts).toMatchObject([
      { lab: 'alignment-run', templates: ['decoy'], minutesAllowed: 30 },
      { lab: 'what-went-wrong' },
    ]);
    const open = await getOpenAttempt(school.ann, attemptId);
    expect(open?.variant).toMatchObject({ template: 'own-choice', minutesAllowed: 15 });
    const sent = { submission: await perfectRunOf(attemptId), idempotencyKey: key };
    const { result } = valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    expect(result?.lab).toBe('alignment-run');
    const next = await getOpenAttempt(
      school.ann,
      await started(school.ann, assignmentId, monday, 1),
    );
    expect(next?.lab).toBe('what-went-wrong');
  });
});
