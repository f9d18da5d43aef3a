import 'server-only';
import { canTakeFromClass, type Viewer } from '../auth/policy';
import { attemptsTable } from '../exports/attempts-table';
import { skillsTable } from '../exports/skills-table';
import { statementOfQuestion } from '../exports/question-statement';
import type { Statement } from '../exports/statement';
import { statementsOf } from '../exports/statements';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { csvFile } from './csv-file';
import { db } from './db';
import { env, hmacOf } from './env';
import { readExportedAttempts } from './exports-attempts';
import { readExportedQuestions } from './exports-questions';
import type { ExportChoices } from './exports-input';
import { readExtraTime } from './extra-time';
import { getGradebook } from './gradebook';
import { gradebookCsv } from './gradebook-csv';
import { namedUuid } from './named-uuid';
import { signedOffSkills } from './observations';
import { getSkillMatrix } from './skill-progress';

export { exportStudentZip } from './exports-student';

type Choices = Pick<ExportChoices, 'names' | 'accommodations'>;

const mayTake = (viewer: Viewer, classId: string): Promise<boolean> =>
  mayWithClass(viewer, classId, canTakeFromClass);

/** Marks and states, students by assignments; with accommodations only where that was chosen. */
export async function exportMarks(
  viewer: Viewer,
  classId: string,
  { names, accommodations }: Choices,
  clock: Clock = systemClock,
): Promise<string | null> {
  if (!(await mayTake(viewer, classId))) return null;
  const gradebook = await getGradebook(viewer, classId, clock);
  if (gradebook === null) return null;
  const students = gradebook.students.map((student) => ({
    ...student,
    displayName: names === 'shown' ? student.displayName : '',
  }));
  const further = accommodations ? await accommodationColumns(classId) : [];
  return gradebookCsv({ ...gradebook, students }, further);
}

async function accommodationColumns(classId: string) {
  const rows = await db().accommodation.findMany({
    where: { student: { classId } },
    select: { studentId: true, extraAttempts: true, extraTime: true },
  });
  const of = new Map(rows.map((row) => [row.studentId, row]));
  return [
    {
      head: 'Extra attempts',
      of: (studentId: string) => of.get(studentId)?.extraAttempts ?? 0,
    },
    {
      head: 'Extra time',
      of: (studentId: string) => readExtraTime(of.get(studentId)?.extraTime),
    },
  ];
}

/** Students by skills: what the marks show, and what was signed off at the real telescope. */
export async function exportSkills(
  viewer: Viewer,
  classId: string,
  { names }: Choices,
  clock: Clock = systemClock,
): Promise<string | null> {
  if (!(await mayTake(viewer, classId))) return null;
  const matrix = await getSkillMatrix(viewer, classId, clock);
  if (matrix === null) return null;
  const signedOff = await signedOffSkills(classId);
  const rows = matrix.students.map(({ id, cardNumber, displayName, standings }) => ({
    cardNumber,
    standings,
    name: names === 'shown' ? displayName : '',
    signedOff: signedOff.get(id) ?? new Set(),
  }));
  return csvFile(skillsTable(rows));
}

/** One row an attempt, practice included. */
export async function exportAttempts(
  viewer: Viewer,
  classId: string,
  { names }: Choices,
  clock: Clock = systemClock,
): Promise<string | null> {
  if (!(await mayTake(viewer, classId))) return null;
  return csvFile(attemptsTable(await readExportedAttempts(classId, names, clock.now())));
}

/**
 * Statements of the Experience API on attempts and practised questions: the students as opaque accounts,
 * named only where that was chosen.
 */
export async function exportStatements(
  viewer: Viewer,
  classId: string,
  { names }: Choices,
  clock: Clock = systemClock,
): Promise<Statement[] | null> {
  if (!(await mayTake(viewer, classId))) return null;
  const attempts = await readExportedAttempts(classId, names, clock.now());
  const source = { homePage: ownAddress(), uuidOf: (name: string) => namedUuid(ownUuid, name) };
  const questions = await readExportedQuestions(classId, names);
  return [
    ...attempts.flatMap((attempt) => statementsOf(attempt, source)),
    ...questions.map((question) => statementOfQuestion(question, source)),
  ];
}

/** The namespace of this product's statements: made once, at random, and never changed. */
const ownUuid = '6f1d3c0e-52a7-4b8e-9c41-0d7a5e2b9f36';

/**
 * An account's home page must be a locator (xAPI 1.0.3, part two, 2.4.2.4), which a urn is not. A school
 * without a public address gets one of its own that leads nowhere (RFC 2606, .invalid).
 */
const ownAddress = (): string =>
  env().publicUrl?.replace(/\/+$/, '') ??
  `https://${hmacOf('home page of statements').slice(0, 16)}.duskbench.invalid`;
