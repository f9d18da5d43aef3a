import 'server-only';
import { canReadNotes, type Viewer } from '../auth/policy';
import type { AnswerKey } from '../pointing/answer-key';
import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';
import { classAccessSelect } from './access';
import { db } from './db';
import { labTaskOf, type LabSamples } from './lab-tasks/lab-tasks';
import { pairVariantSchema } from './lab-tasks/stored-pair';
import { runVariantSchema } from './lab-tasks/stored-run';
import { storedAnswerKeySchema } from './lab-tasks/stored-sky';

/** One student's own task with its answer key, as the attempt keeps them. */
export type AttemptKey = {
  attemptId: string;
  title: string;
  attemptNumber: number;
  mode: 'practice' | 'check';
  isOpen: boolean;
  studentId: string;
  studentName: string;
  classId: string;
  /** Where two stars of the evening are what it is about. */
  sky: { key: AnswerKey; frame: SkyFrame; scenario: Scenario } | null;
  task: LabSamples;
};

/** For the class's teachers, while the attempt is under way too; for no student, not even its own. */
export async function getAttemptKey(viewer: Viewer, attemptId: string): Promise<AttemptKey | null> {
  const row = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      id: true,
      title: true,
      number: true,
      mode: true,
      status: true,
      lab: true,
      variant: true,
      answerKey: true,
      student: { select: { id: true, displayName: true, class: { select: classAccessSelect } } },
    },
  });
  if (row === null || !canReadNotes(viewer, row.student.class)) return null;
  return {
    attemptId: row.id,
    title: row.title,
    attemptNumber: row.number,
    mode: row.mode,
    isOpen: row.status === 'open',
    studentId: row.student.id,
    studentName: row.student.displayName,
    classId: row.student.class.id,
    sky: skyOf(row),
    task: labTaskOf(row.lab).sampleOf(row),
  };
}

function skyOf(row: { lab: string; variant: unknown; answerKey: unknown }): AttemptKey['sky'] {
  const variant =
    row.lab === 'pick-the-pair'
      ? pairVariantSchema.parse(row.variant)
      : row.lab === 'alignment-run'
        ? runVariantSchema.parse(row.variant)
        : null;
  if (variant === null) return null;
  const { frame, scenario } = variant;
  return { key: storedAnswerKeySchema.parse(row.answerKey), frame, scenario };
}
