import 'server-only';
import { strToU8, zipSync } from 'fflate';
import { canTakeFromClass, type Viewer } from '../auth/policy';
import { classOfStudent } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { getStudentGradebook } from './gradebook';
import { gradebookCsv } from './gradebook-csv';
import { exportStudent } from './student-export';

export type StudentZip = { fileName: string; bytes: Uint8Array<ArrayBuffer> };

/**
 * All that is kept about one student, as a folder that a family can open: the whole as JSON, the marks as
 * a table, and what is what. For the class's owner and teachers; accommodations only where chosen.
 */
export async function exportStudentZip(
  viewer: Viewer,
  studentId: string,
  { accommodations }: { accommodations: boolean },
  clock: Clock = systemClock,
): Promise<StudentZip | null> {
  if ((await classOfStudent(viewer, studentId, canTakeFromClass)) === null) return null;
  const [data, gradebook, student] = await Promise.all([
    exportStudent(viewer, studentId, { accommodations }),
    getStudentGradebook(viewer, { studentId }, clock),
    db().student.findUnique({
      where: { id: studentId },
      select: { displayName: true, cardNumber: true, class: { select: { name: true } } },
    }),
  ]);
  if (data === null || gradebook === null || student === null) return null;
  const now = clock.now();
  const files = {
    'read-me.txt': readMe({ ...student, className: student.class.name, now, accommodations }),
    'data.json': `${JSON.stringify(data, null, 2)}\n`,
    'marks.csv': gradebookCsv(gradebook),
  };
  const bytes = zipSync(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])),
    { mtime: now },
  );
  return { fileName: `student-card-${String(student.cardNumber)}.zip`, bytes };
}

const readMe = (about: {
  displayName: string;
  cardNumber: number;
  className: string;
  now: Date;
  accommodations: boolean;
}): string =>
  [
    `What is kept about ${about.displayName} (card ${String(about.cardNumber)}) of ${about.className}`,
    `as of ${about.now.toISOString().slice(0, 16).replace('T', ' ')} UTC.`,
    '',
    'marks.csv   The mark and the state of each assignment, for any spreadsheet.',
    'data.json   Everything: attempts with each saved step, answers, marks and feedback; questions',
    '            practised; what teachers noted, commented, excused or extended; notes from the real',
    '            telescope; groups; when and with what kind of browser this student signed in.',
    '            Times are UTC.',
    '',
    about.accommodations
      ? 'Extra attempts and extra time are in it: that was chosen when the file was made.'
      : 'Extra attempts and extra time are left out: they were not chosen when the file was made.',
    'Not in it: the words of the sign-in card, of which only a one-way hash is kept; the answers to',
    'questions that are still open; anything about other students.',
    '',
    'This file is about a child. Give it only to those who may have it, and delete it when it has done',
    'its work.',
    '',
  ].join('\r\n');
