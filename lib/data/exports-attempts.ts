import 'server-only';
import { z } from 'zod';
import type { ExportedAttempt } from '../exports/exported-attempt';
import { afterPenalty } from '../grading/counted-mark';
import { practicePassMark } from '../mastery/evidence';
import { reachesPassMark } from '../mastery/pass-mark';
import { standingOf, standingSelect } from './attempt-standing';
import { db } from './db';
import { labTaskOf } from './lab-tasks/lab-tasks';

const gatesSchema = z.object({ gates: z.array(z.object({ id: z.string() })).catch([]) });

/** The failed gates of the attempts that have some: results are long, so that no others are read. */
async function gatesOf(where: { student: { classId: string } }) {
  const marks = await db().mark.findMany({
    where: { gateFailed: true, attempt: where },
    select: { attemptId: true, graderVersion: true, result: true },
  });
  return new Map(
    marks.map(({ attemptId, graderVersion, result }) => [
      `${attemptId} ${String(graderVersion)}`,
      (gatesSchema.safeParse(result).data?.gates ?? []).map(({ id }) => id.replaceAll('-', ' ')),
    ]),
  );
}

/** All attempts of a class as they are marked now, by card and time. Internal: after authorising. */
export async function readExportedAttempts(
  classId: string,
  names: 'shown' | 'cards',
  now: Date,
): Promise<ExportedAttempt[]> {
  const where = { student: { classId } };
  const [attempts, gates] = await Promise.all([
    db().attempt.findMany({
      where,
      orderBy: [{ student: { cardNumber: 'asc' } }, { startedAt: 'asc' }, { id: 'asc' }],
      select: {
        id: true,
        lab: true,
        number: true,
        status: true,
        startedAt: true,
        returnedAt: true,
        partId: true,
        marks: {
          orderBy: { graderVersion: 'desc' },
          take: 1,
          select: { total: true, gateFailed: true, graderVersion: true },
        },
        ...standingSelect,
        student: {
          select: { ...standingSelect.student.select, displayName: true, cardNumber: true },
        },
        assignment: {
          select: {
            ...standingSelect.assignment.select,
            id: true,
            title: true,
            parts: { where: { kind: 'lab' }, orderBy: { position: 'asc' }, select: { id: true } },
          },
        },
      },
    }),
    gatesOf(where),
  ]);
  return attempts.map((attempt) => {
    const { id, student, assignment, mode, number, startedAt, submittedAt, returnedAt } = attempt;
    const standing = standingOf(attempt, now);
    const latePenalty = submittedAt === null ? 0 : standing.latePenalty;
    const [mark] = attempt.marks;
    const { lab, title } = labTaskOf(attempt.lab);
    const part = assignment?.parts.findIndex((one) => one.id === attempt.partId) ?? -1;
    return {
      id,
      studentId: student.id,
      cardNumber: student.cardNumber,
      name: names === 'shown' ? student.displayName : '',
      assignment: assignment === null ? null : { id: assignment.id, title: assignment.title },
      part: part < 0 ? null : part + 1,
      lab,
      labTitle: title,
      mode,
      number,
      startedAt,
      submittedAt,
      returnedAt,
      latePenalty,
      mark:
        mark === undefined
          ? null
          : {
              total: mark.total,
              passed: reachesPassMark({
                mark: afterPenalty({ raw: mark.total, latePenalty }),
                passMark: standing.policy?.passMark ?? practicePassMark,
                gateFailed: mark.gateFailed,
              }),
              gates: gates.get(`${id} ${String(mark.graderVersion)}`) ?? [],
              graderVersion: mark.graderVersion,
            },
    };
  });
}
