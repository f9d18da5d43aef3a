import 'server-only';
import { z } from 'zod';
import { course } from '../course/lessons';
import { afterPenalty } from '../grading/counted-mark';
import { passes, practicePassMark } from '../mastery/evidence';
import { reachesPassMark } from '../mastery/pass-mark';
import { standingOf, standingSelect } from './attempt-standing';
import { labTaskOf, type LabResult } from './lab-tasks/lab-tasks';
import { db } from './db';
import { readingOf } from './live-reading';
import { liveRules, standingNow, type HandedIn, type LiveStanding } from './live-standing';
import { stageOfDraft, type LiveStage } from './live-stage';

export type LiveRow = {
  studentId: string;
  displayName: string;
  cardNumber: number;
  groupIds: readonly string[];
  standing: LiveStanding;
  /** What was handed in last in this period, where a safety gate failed in it. */
  failed: { attemptId: string; result: LabResult } | null;
};

/**
 * What need not be read again from one look to the next: a draft can be half a megabyte, and stays as it
 * is until another takes its place.
 */
export type LiveMemory = {
  stages: Map<string, { sequence: number; stage: LiveStage | null }>;
  results: Map<string, LabResult>;
};
export const newLiveMemory = (): LiveMemory => ({ stages: new Map(), results: new Map() });

/** Every student of the class that is in it, by card number. Internal: called after authorising. */
export async function readLiveRows(
  classId: string,
  now: Date,
  memory: LiveMemory,
): Promise<LiveRow[]> {
  const since = new Date(now.getTime() - liveRules.lessonMinutes * 60_000);
  const student = { classId, leftAt: null };
  const [students, sessions, open, handedIn, questionRows] = await Promise.all([
    db().student.findMany({
      where: student,
      orderBy: { cardNumber: 'asc' },
      select: {
        id: true,
        displayName: true,
        cardNumber: true,
        groups: { select: { groupId: true } },
      },
    }),
    db().session.findMany({
      where: { student, lastSeenAt: { gte: since } },
      select: { studentId: true, lastSeenAt: true, endedAt: true },
    }),
    readOpen(classId, since, memory),
    readHandedIn(classId, since, now),
    db().askedQuestion.findMany({
      where: { student, OR: [{ askedAt: { gte: since } }, { answeredAt: { gte: since } }] },
      orderBy: [{ answeredAt: 'desc' }, { number: 'desc' }],
      select: { studentId: true, lesson: true, askedAt: true, answeredAt: true, mark: true },
    }),
  ]);
  const questions = questionRows.flatMap((row) => {
    // A lesson that is no longer in the course has no name to show.
    const lesson = lessonSchema.safeParse(row.lesson);
    return lesson.success ? { ...row, lesson: lesson.data } : [];
  });
  const failed = await readFailed(handedIn, memory);
  return students.map(({ id, displayName, cardNumber, groups }) => {
    const own = <T extends { studentId: string | null }>(rows: readonly T[]) =>
      rows.filter(({ studentId }) => studentId === id);
    const seen = own(sessions);
    const asked = own(questions);
    const waiting = asked.filter(({ answeredAt }) => answeredAt === null);
    const works = own(handedIn);
    const standing = standingNow(
      {
        lastSeenAt: latest(seen.map(({ lastSeenAt }) => lastSeenAt)),
        signedOut: seen.length > 0 && seen.every(({ endedAt }) => endedAt !== null),
        open: own(open).reduce<(typeof open)[number] | null>(
          (last, one) => (last === null || one.lastStepAt > last.lastStepAt ? one : last),
          null,
        ),
        question: waiting.reduce<(typeof waiting)[number] | null>(
          (last, one) => (last === null || one.askedAt > last.askedAt ? one : last),
          null,
        ),
        answers: asked.flatMap(({ lesson, answeredAt, mark }) =>
          answeredAt === null || mark === null
            ? []
            : {
                lesson,
                at: answeredAt,
                passed: passes({ mark, passMark: practicePassMark, gateFailed: false }),
              },
        ),
        handedIn: works,
        reading: readingOf(id, since),
      },
      now,
    );
    return {
      studentId: id,
      displayName,
      cardNumber,
      standing,
      groupIds: groups.map(({ groupId }) => groupId),
      failed: failed.get(works[0]?.attemptId ?? '') ?? null,
    };
  });
}

const lessonSchema = z.enum(course.map(({ slug }) => slug));

const latest = (moments: readonly Date[]): Date | null =>
  moments.reduce<Date | null>((last, at) => (last === null || at > last ? at : last), null);

/** Open work with a step in this period. */
async function readOpen(classId: string, since: Date, memory: LiveMemory) {
  const attempt = { status: 'open' as const, student: { classId, leftAt: null } };
  const steps = await db().event.groupBy({
    by: ['attemptId'],
    where: { attempt },
    _max: { at: true, sequence: true },
    having: { at: { _max: { gte: since } } },
  });
  if (steps.length === 0) return [];
  const lastOf = new Map(steps.map(({ attemptId, _max }) => [attemptId, _max]));
  const rows = await db().attempt.findMany({
    where: { id: { in: [...lastOf.keys()] } },
    select: {
      id: true,
      studentId: true,
      assignmentId: true,
      partId: true,
      lab: true,
      mode: true,
      title: true,
      startedAt: true,
      assignment: {
        select: {
          parts: { where: { kind: 'lab' }, orderBy: { position: 'asc' }, select: { id: true } },
        },
      },
    },
  });
  for (const attemptId of memory.stages.keys()) {
    if (!lastOf.has(attemptId)) memory.stages.delete(attemptId);
  }
  return Promise.all(
    rows.map(async ({ id, partId, lab: stored, assignment, ...row }) => {
      const { lab } = labTaskOf(stored);
      const last = lastOf.get(id);
      const parts = assignment?.parts ?? [];
      const place = parts.findIndex((part) => part.id === partId);
      return {
        ...row,
        attemptId: id,
        lab,
        part: parts.length < 2 || place < 0 ? null : { number: place + 1, of: parts.length },
        stage: await stageOf({ attemptId: id, lab, sequence: last?.sequence ?? 0 }, memory),
        lastStepAt: last?.at ?? row.startedAt,
      };
    }),
  );
}

async function stageOf(
  { attemptId, lab, sequence }: { attemptId: string; lab: HandedIn['lab']; sequence: number },
  { stages }: LiveMemory,
): Promise<LiveStage | null> {
  const known = stages.get(attemptId);
  if (known?.sequence === sequence) return known.stage;
  const event = await db().event.findUnique({
    where: { attemptId_sequence: { attemptId, sequence } },
    select: { kind: true, payload: true },
  });
  const stage = event?.kind === 'draft' ? stageOfDraft(lab, event.payload) : null;
  stages.set(attemptId, { sequence, stage });
  return stage;
}

async function readHandedIn(classId: string, since: Date, now: Date) {
  const rows = await db().attempt.findMany({
    where: {
      status: 'submitted',
      submittedAt: { gte: since },
      student: { classId, leftAt: null },
    },
    orderBy: { submittedAt: 'desc' },
    select: {
      id: true,
      studentId: true,
      assignmentId: true,
      lab: true,
      title: true,
      ...standingSelect,
      marks: {
        orderBy: { graderVersion: 'desc' },
        take: 1,
        select: { total: true, gateFailed: true },
      },
    },
  });
  return rows.flatMap((row) => {
    const { id, studentId, assignmentId, mode, title, submittedAt } = row;
    if (submittedAt === null) return [];
    const [mark] = row.marks;
    const gateFailed = mark?.gateFailed ?? false;
    const { latePenalty, policy } = standingOf(row, now);
    const passMark = policy?.passMark ?? practicePassMark;
    const work: HandedIn & { studentId: string } = {
      studentId,
      assignmentId,
      mode,
      title,
      attemptId: id,
      lab: labTaskOf(row.lab).lab,
      at: submittedAt,
      gateFailed,
      passed:
        mark === undefined
          ? null
          : reachesPassMark({
              mark: afterPenalty({ raw: mark.total, latePenalty }),
              passMark,
              gateFailed,
            }),
    };
    return work;
  });
}

/** The results of what failed a gate, by attempt; only of what each student handed in last. */
async function readFailed(
  handedIn: readonly (HandedIn & { studentId: string })[],
  { results }: LiveMemory,
): Promise<ReadonlyMap<string, NonNullable<LiveRow['failed']>>> {
  const lastOf = new Map(handedIn.toReversed().map((work) => [work.studentId, work]));
  const wanted = [...lastOf.values()].filter(({ gateFailed }) => gateFailed);
  for (const attemptId of results.keys()) {
    if (!wanted.some((work) => work.attemptId === attemptId)) results.delete(attemptId);
  }
  const unread = wanted.filter(({ attemptId }) => !results.has(attemptId));
  const marks =
    unread.length === 0
      ? []
      : await db().mark.findMany({
          where: { attemptId: { in: unread.map(({ attemptId }) => attemptId) } },
          orderBy: { graderVersion: 'asc' },
          select: { attemptId: true, result: true },
        });
  // Of several versions of a mark the last one stays.
  for (const { attemptId, result } of marks) {
    const lab = wanted.find((work) => work.attemptId === attemptId)?.lab;
    if (lab !== undefined) results.set(attemptId, labTaskOf(lab).readResult(result));
  }
  return new Map([...results].map(([attemptId, result]) => [attemptId, { attemptId, result }]));
}
