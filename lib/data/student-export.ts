import 'server-only';
import { canTakeFromClass, type Viewer } from '../auth/policy';
import { faceOfItem } from '../items/item-face';
import { classOfStudent } from './access';
import { db } from './db';
import { storedItemSchema } from './stored-item';

/**
 * Everything that is kept about one student, for the student or the family to have; not the hash of
 * the secret, and not the key of a question that is still open. Accommodations only where chosen. For the
 * class's owner and teachers.
 */
export async function exportStudent(
  viewer: Viewer,
  studentId: string,
  { accommodations = false }: { accommodations?: boolean } = {},
): Promise<object | null> {
  if ((await classOfStudent(viewer, studentId, canTakeFromClass)) === null) return null;
  const kept = await db().student.findUnique({
    where: { id: studentId },
    select: {
      displayName: true,
      cardNumber: true,
      class: { select: { name: true } },
      accommodation: { select: { extraAttempts: true, extraTime: true } },
      sourcedId: true,
      leftAt: true,
      groups: { select: { group: { select: { name: true, kitId: true } } } },
      sessions: { select: { createdAt: true, lastSeenAt: true, endedAt: true, device: true } },
      overrides: {
        select: { assignmentId: true, mark: true, excused: true, note: true, changedAt: true },
      },
      extensions: { select: { assignmentId: true, dueAt: true, note: true, changedAt: true } },
      observations: {
        // What was taken back is no longer said of the student.
        where: { retractedAt: null },
        orderBy: { observedAt: 'asc' },
        select: {
          skill: true,
          level: true,
          gates: true,
          instrument: true,
          conditions: true,
          prompts: true,
          note: true,
          observedAt: true,
          receivedAt: true,
        },
      },
      attempts: {
        orderBy: { startedAt: 'asc' },
        select: {
          title: true,
          assignmentId: true,
          mode: true,
          number: true,
          status: true,
          placeName: true,
          lab: true,
          template: true,
          startedAt: true,
          submittedAt: true,
          submission: true,
          returnedAt: true,
          comments: {
            orderBy: { changedAt: 'asc' },
            select: { criterion: true, text: true, changedAt: true },
          },
          events: {
            orderBy: [{ at: 'asc' }, { sequence: 'asc' }],
            select: { sequence: true, kind: true, payload: true, at: true },
          },
          marks: { select: { graderVersion: true, total: true, result: true, gradedAt: true } },
        },
      },
      questions: {
        orderBy: [{ lesson: 'asc' }, { number: 'asc' }],
        select: {
          lesson: true,
          number: true,
          skill: true,
          family: true,
          template: true,
          item: true,
          answer: true,
          mark: true,
          graderVersion: true,
          askedAt: true,
          answeredAt: true,
        },
      },
    },
  });
  if (kept === null) return null;
  const { accommodation, ...always } = kept;
  return {
    ...always,
    ...(accommodations ? { accommodation } : {}),
    questions: kept.questions.map(asTheStudentMaySee),
  };
}

/** A question that still waits is as the student sees it: its answer would be in the file. */
const asTheStudentMaySee = <Q extends { item: unknown; answeredAt: Date | null }>(question: Q) =>
  question.answeredAt === null
    ? { ...question, item: faceOfItem(storedItemSchema.parse(question.item)) }
    : question;
