import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { gradebookStateText } from '@/components/grading/gradebook/gradebook-state-text';
import type { Viewer } from '@/lib/auth/policy';
import { skills, skillTitles } from '@/lib/course/skills';
import { startPractice, submitAttempt } from '@/lib/data/attempts';
import { getClassStatistics } from '@/lib/data/class-statistics';
import { db } from '@/lib/data/db';
import {
  exportAttempts,
  exportMarks,
  exportSkills,
  exportStatements,
  exportStudentZip,
} from '@/lib/data/exports';
import { readClassFile, readExportChoices } from '@/lib/data/exports-input';
import { excuse, extendDue, getGradebook } from '@/lib/data/gradebook';
import { answerQuestion, nextQuestion } from '@/lib/data/questions';
import { exportStudent, setExtraAttempts, setExtraTime } from '@/lib/data/roster';
import { getSkillMatrix } from '@/lib/data/skill-progress';
import { storedItemSchema } from '@/lib/data/stored-item';
import { wrongAnswers } from '@/lib/items/answers-to-try';
import { shownMark } from '@/lib/grading/shown-mark';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  labPart,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
/** What a spreadsheet would take for a formula, and what a careless writer of CSV would break on. */
const hostile = '=HYPERLINK("http://x.example","Ann")';
const awkward = 'Zoë, "the\u00a0quick" O’Neill';
const named = { names: 'shown', accommodations: false } as const;
const byCard = { names: 'cards', accommodations: false } as const;
const now = afterDue(48);

beforeAll(async () => {
  school = await makeSchool();
  const { owner, ann, ben, cy } = school;
  // As rosters of long ago may hold them: today the form refuses such names.
  for (const [viewer, displayName] of [
    [ann, hostile],
    [ben, awkward],
  ] as const)
    await db().student.update({ where: { id: viewer.studentId }, data: { displayName } });
  const first = await published(school, {}, monday, { title: '+1, "pairs"' });
  const second = await published(school, {}, monday, {
    parts: [labPart('pick-the-pair', ['free-pair']), labPart('put-it-together', ['take-down'])],
  });
  const hand = async (viewer: typeof ann, attemptId: string, submission: object, clock = monday) =>
    valueOf(
      await submitAttempt(viewer, attemptId, { submission, idempotencyKey: attemptId }, clock),
    );
  const best = await started(ann, first);
  await hand(ann, best, await answerFor(best, 'best'));
  const late = await started(ben, first);
  await hand(ben, late, await answerFor(late, 'middling'), afterDue(25));
  const fell = await started(ben, second, monday, 1);
  await hand(ben, fell, {
    order: ['open-clamp'],
    hazards: { unfolding: [], lifting: [], finishing: [] },
  });
  await started(ann, second);
  valueOf(await startPractice(ann, { lab: 'level' }, monday));
  valueOf(
    await excuse(owner, { studentId: cy.studentId, assignmentId: first, note: 'Away.' }, monday),
  );
  valueOf(await setExtraAttempts(owner, ann.studentId, 2));
  valueOf(await setExtraTime(owner, ann.studentId, '1.5'));
});

const records = z.array(z.array(z.string()));
/** As a spreadsheet's import reads it. */
const read = (csv: string | null): string[][] => {
  if (csv === null) throw new Error('the file was refused');
  expect(csv.startsWith('\ufeff')).toBe(true);
  expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  return records.parse(parse(csv, { bom: true }));
};
/** OWASP's list: no cell may begin as a formula does. Numbers below nought do not occur. */
const expectSafe = (rows: string[][]): void => {
  for (const cell of rows.flat()) expect(cell).not.toMatch(/^\s*[=+\-−@\t\r]/u);
};
const must = <T>(value: T | null | undefined): T => {
  if (value === null || value === undefined) throw new Error('there is none');
  return value;
};
const { classId, studentIdOf } = {
  classId: () => school.classId,
  studentIdOf: (card: number) => must([school.ann, school.ben, school.cy][card - 1]).studentId,
};

test('an owner and a teacher take files away; observer, substitute, others and nobody do not', async () => {
  const cover: Viewer = {
    kind: 'cover',
    coverId: 'c',
    displayName: 'Cover teacher',
    classId: classId(),
  };
  const files: ((viewer: Viewer) => Promise<unknown>)[] = [
    (viewer) => exportMarks(viewer, classId(), named, now),
    (viewer) => exportSkills(viewer, classId(), named, now),
    (viewer) => exportAttempts(viewer, classId(), named, now),
    (viewer) => exportStatements(viewer, classId(), named, now),
    (viewer) => exportStudentZip(viewer, studentIdOf(1), { accommodations: false }, now),
  ];
  const { owner, colleague, observer, stranger, ann, dee, anonymous } = school;
  for (const file of files) {
    for (const viewer of [owner, colleague]) expect(await file(viewer)).not.toBeNull();
    for (const viewer of [observer, cover, stranger, ann, dee, anonymous])
      expect(await file(viewer)).toBeNull();
  }
});

test('an address that cannot be read gives the least away', () => {
  expect(readExportChoices({})).toEqual({ names: 'cards', accommodations: false, student: null });
  expect(readExportChoices({ names: ['shown', 'x'], accommodations: 'yes', student: '' })).toEqual({
    names: 'cards',
    accommodations: false,
    student: null,
  });
  expect(readExportChoices({ names: 'shown', accommodations: 'with', student: 's' })).toEqual({
    names: 'shown',
    accommodations: true,
    student: 's',
  });
  expect(readClassFile('marks.csv')).toBe('marks.csv');
  expect(readClassFile('../secret')).toBeNull();
});

describe('the marks', () => {
  test('read back as the gradebook has them', async () => {
    const rows = read(await exportMarks(school.owner, classId(), named, now));
    const book = must(await getGradebook(school.owner, classId(), now));
    expectSafe(rows);
    expect(rows[0]).toHaveLength(2 + 2 * book.assignments.length);
    for (const [index, { id, cardNumber }] of book.students.entries()) {
      const row = must(rows[index + 1]);
      expect(row[0]).toBe(String(cardNumber));
      for (const [column, assignment] of book.assignments.entries()) {
        const cell = must(
          book.cells.find((one) => one.studentId === id && one.assignmentId === assignment.id),
        );
        const mark = row[2 + 2 * column] ?? '';
        expect(mark === '' ? null : Number(mark)).toBe(
          cell.mark === null ? null : shownMark(cell.mark),
        );
        expect(row[3 + 2 * column]).toBe(gradebookStateText[cell.state].word);
      }
    }
    // The names as they are, but for the one apostrophe that keeps a formula from running.
    expect(rows.map((row) => row[1])).toEqual(['Name', `'${hostile}`, awkward, 'Cy']);
  });

  test('name nobody by card, and tell of accommodations only when that was chosen', async () => {
    const bare = must(await exportMarks(school.owner, classId(), byCard, now));
    for (const part of ['HYPERLINK', 'Zoë', 'Cy', 'Extra']) expect(bare).not.toContain(part);
    const asked = { ...byCard, accommodations: true };
    const rows = read(await exportMarks(school.owner, classId(), asked, now));
    expect(rows.map((row) => row.slice(-2))).toEqual([
      ['Extra attempts', 'Extra time'],
      ['2', '1.5'],
      ['0', 'none'],
      ['0', 'none'],
    ]);
  });
});

test('the skills read back as the skill matrix has them', async () => {
  const rows = read(await exportSkills(school.owner, classId(), named, now));
  const matrix = must(await getSkillMatrix(school.owner, classId(), now));
  expectSafe(rows);
  expect(rows[0]?.slice(2)).toEqual(
    skills.flatMap((skill) => [skillTitles[skill], `${skillTitles[skill]}: signed off`]),
  );
  const words = { 'not-started': 'not started', practising: 'practising' } as const;
  for (const [index, { standings }] of matrix.students.entries()) {
    for (const [place, { state }] of standings.entries()) {
      const cell = rows[index + 1]?.[2 + 2 * place] ?? '';
      if (state === 'not-started' || state === 'practising') expect(cell).toContain(words[state]);
      else expect(cell).toContain('mastered');
    }
  }
  expect(must(await exportSkills(school.owner, classId(), byCard, now))).not.toContain('Zoë');
});

test('the attempts read back as the database has them, with lateness and gates', async () => {
  const [head, ...rows] = read(await exportAttempts(school.owner, classId(), named, now));
  expectSafe(rows);
  const of = (row: readonly string[], column: string): string =>
    row[must(head).indexOf(column)] ?? `no column ${column}`;
  const stored = await db().attempt.findMany({
    where: { student: { classId: classId() } },
    orderBy: [{ student: { cardNumber: 'asc' } }, { startedAt: 'asc' }, { id: 'asc' }],
    include: { marks: true, student: true },
  });
  expect(rows).toHaveLength(stored.length);
  for (const [index, attempt] of stored.entries()) {
    const row = must(rows[index]);
    const [mark] = attempt.marks;
    expect(of(row, 'Card')).toBe(String(attempt.student.cardNumber));
    expect(of(row, 'Lab')).toBe(attempt.lab);
    expect(`${of(row, 'Started (UTC)').replace(' ', 'T')}.000Z`).toBe(
      attempt.startedAt.toISOString(),
    );
    expect(of(row, 'Mark before lateness')).toBe(
      mark === undefined ? '' : String(shownMark(mark.total)),
    );
  }
  const late = must(rows.find((row) => of(row, 'Late penalty in per cent') === '20'));
  // 25 hours late with 15 minutes' grace at 10 % a day: two days (the design's own example).
  expect(Number(of(late, 'Mark that counts'))).toBeCloseTo(
    0.8 * Number(of(late, 'Mark before lateness')),
    0,
  );
  const gate = must(rows.find((row) => of(row, 'Safety gates failed') !== ''));
  expect([of(gate, 'Safety gates failed'), of(gate, 'Passed'), of(gate, 'Part')]).toEqual([
    ...['tube fell', 'no', '2'],
  ]);
  const open = rows.filter((row) => of(row, 'Handed in (UTC)') === '');
  expect(open.map((row) => of(row, 'Kind')).sort()).toEqual(['check', 'practice']);
});

/*
 * The rules of "Experience API 1.0.3, part two" for what a statement must and may hold: 2.2 (no null, no
 * other properties), 2.4 (actor, verb, object required; version not recommended; stored set by the
 * store), 2.4.1 (UUID), 2.4.2.1 and 2.4.2.4 (one identifier; account of homePage and name), 2.4.3 (IRI,
 * display), 2.4.4.1 (activity), 2.4.5 and 2.4.5.1 (score within its bounds), 2.4.6 (registration a UUID),
 * 2.4.7 and 4.5 (timestamp), 4.2 (language tags), 4.6 (durations).
 */
const iri = z.string().regex(/^[a-z][a-z0-9+.-]*:\/\/[^\s<>"{}|\\^`]+$/i);
const languageMap = z.record(z.string().regex(/^[a-z]{2,3}(-[A-Z]{2})?$/), z.string().min(1));
const activity = z.strictObject({
  objectType: z.literal('Activity'),
  id: iri,
  definition: z.strictObject({ name: languageMap, type: iri }),
});
const statementSchema = z.strictObject({
  id: z.string().regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/),
  actor: z.strictObject({
    objectType: z.literal('Agent'),
    name: z.string().min(1).optional(),
    account: z.strictObject({ homePage: iri, name: z.string().min(1) }),
  }),
  verb: z.strictObject({ id: iri, display: languageMap }),
  object: activity,
  result: z
    .strictObject({
      score: z
        .strictObject({
          scaled: z.number().min(-1).max(1),
          raw: z.number(),
          min: z.number(),
          max: z.number(),
        })
        .refine(({ raw, min, max }) => min < max && raw >= min && raw <= max)
        .optional(),
      success: z.boolean().optional(),
      completion: z.boolean(),
      duration: z
        .string()
        .regex(/^PT(?=\d)(\d+H)?(\d+M)?(\d+(\.\d{1,2})?S)?$/)
        .optional(),
    })
    .optional(),
  context: z.strictObject({
    registration: z.uuid(),
    platform: z.string(),
    language: z.string().regex(/^[a-z]{2}-[A-Z]{2}$/),
    contextActivities: z.strictObject({ parent: z.array(activity).min(1) }).optional(),
    extensions: z.record(iri, z.unknown()).optional(),
  }),
  timestamp: z.iso.datetime(),
});

describe('the statements', () => {
  const exported = async (choices: typeof named | typeof byCard) =>
    must(await exportStatements(school.owner, classId(), choices, now));

  test('keep the rules of the specification and say what the attempts say', async () => {
    const sent: unknown = JSON.parse(JSON.stringify(await exported(byCard)));
    const statements = z.array(statementSchema).parse(sent);
    expect(new Set(statements.map(({ id }) => id)).size).toBe(statements.length);
    const stored = await db().attempt.findMany({
      where: { student: { classId: classId() } },
      include: { marks: true },
    });
    const handedIn = stored.filter(({ submittedAt }) => submittedAt !== null);
    expect(statements).toHaveLength(stored.length + handedIn.length);
    for (const { studentId, submittedAt, startedAt, marks } of handedIn) {
      const mark = must(marks[0]);
      const told = must(
        statements.find(
          ({ actor, timestamp, result, object }) =>
            actor.account.name === studentId &&
            timestamp === submittedAt?.toISOString() &&
            result?.score?.raw === mark.total &&
            object.id.includes('/labs/'),
        ),
      );
      expect(told.result?.score?.scaled).toBeCloseTo(mark.total / 100, 12);
      expect(told.verb.display['en-GB']).toBe(told.result?.success === true ? 'passed' : 'failed');
      expect(told.result?.success === true && mark.gateFailed).toBe(false);
      if (submittedAt?.getTime() === startedAt.getTime())
        expect(told.result?.duration).toBe('PT0S');
    }
  });

  test('are the same the second time, and a name stands in them only where it was chosen', async () => {
    const one = await exported(byCard);
    expect(await exported(byCard)).toEqual(one);
    const text = JSON.stringify(one);
    for (const name of ['HYPERLINK', 'Zoë', '"Cy"']) expect(text).not.toContain(name);
    const shown = await exported(named);
    expect(shown.map(({ id }) => id)).toEqual(one.map(({ id }) => id));
    expect(shown.some(({ actor }) => actor.name === hostile)).toBe(true);
    expect(JSON.stringify(shown)).not.toContain('xtraTime');
  });
});

test('a practised question is a statement once it is answered: how far it was right, not what was said', async () => {
  const apart = await makeSchool();
  const { owner, ann, classId: own } = apart;
  const ask = async () =>
    must(valueOf(await nextQuestion(ann, { lesson: 'level-enough' }, monday)));
  const told = async (names: 'shown' | 'cards') =>
    must(await exportStatements(owner, own, { names, accommodations: false }, monday));
  const { id: questionId } = await ask();
  expect(await told('cards')).toEqual([]);
  const stored = await db().askedQuestion.findUniqueOrThrow({ where: { id: questionId } });
  const answer = must(wrongAnswers(storedItemSchema.parse(stored.item))[0]);
  valueOf(await answerQuestion(ann, questionId, answer, monday));
  await ask();
  const { mark } = await db().askedQuestion.findUniqueOrThrow({ where: { id: questionId } });

  const [statement, another] = z.array(statementSchema).parse(await told('cards'));
  expect(another).toBeUndefined();
  expect(statement?.verb.id).toBe('http://adlnet.gov/expapi/verbs/answered');
  expect(statement?.object.definition.type).toBe('http://adlnet.gov/expapi/activities/question');
  expect(statement?.object.id).toMatch(
    new RegExp(`/questions/${stored.family}/${stored.template}$`),
  );
  expect(statement?.context.contextActivities?.parent[0]?.id).toMatch(/\/lessons\/level-enough$/);
  expect(statement?.actor).toMatchObject({ account: { name: ann.studentId } });
  expect(statement?.result?.score?.scaled).toBeCloseTo(must(mark) / 100, 12);
  expect(statement?.result).not.toHaveProperty('success');
  expect(statement?.timestamp).toBe(monday.now().toISOString());
  expect(JSON.stringify(statement)).not.toContain('Ann');

  expect((await told('cards'))[0]).toEqual(statement);
  expect((await told('shown'))[0]).toMatchObject({ id: statement?.id, actor: { name: 'Ann' } });
  await db().askedQuestion.update({
    where: { id: questionId },
    data: { mark: 50, graderVersion: 9 },
  });
  const marked = (await told('cards'))[0];
  expect(marked?.id).not.toBe(statement?.id);
  expect(marked?.context.registration).toBe(statement?.context.registration);
});

test('what lateness takes below the pass mark has not passed; told otherwise later it is another statement', async () => {
  const apart = await makeSchool();
  const { owner, ann } = apart;
  const assignmentId = await published(apart);
  const attemptId = await started(ann, assignmentId);
  const input = {
    submission: await answerFor(attemptId, 'best'),
    idempotencyKey: attemptId,
  };
  valueOf(await submitAttempt(ann, attemptId, input, afterDue(25)));
  await db().mark.updateMany({ where: { attemptId }, data: { total: 85 } });
  const told = async () => {
    const [head, row] = read(await exportAttempts(owner, apart.classId, byCard, now));
    const column = (name: string) => must(row)[must(head).indexOf(name)];
    const [begun, end] = must(await exportStatements(owner, apart.classId, byCard, now));
    return {
      row: [column('Mark that counts'), column('Passed')],
      ids: [must(begun).id, must(end).id],
      said: [must(end).verb.display['en-GB'], must(end).result?.success],
    };
  };
  const late = await told();
  expect([late.row, late.said]).toEqual([
    ['68', 'no'],
    ['failed', false],
  ]);
  const dueAt = afterDue(26).now().toISOString();
  valueOf(
    await extendDue(owner, { studentId: ann.studentId, assignmentId, dueAt, note: 'Ill.' }, monday),
  );
  const inTime = await told();
  expect([inTime.row, inTime.said]).toEqual([
    ['85', 'yes'],
    ['passed', true],
  ]);
  const { graderVersion } = await db().mark.findFirstOrThrow({ where: { attemptId } });
  await db().mark.create({
    data: {
      attemptId,
      graderVersion: graderVersion + 1,
      total: 90,
      result: {},
      gradedAt: afterDue(30).now(),
    },
  });
  const regraded = await told();
  const all = [late, inTime, regraded];
  expect(new Set(all.map(({ ids: [begun] }) => begun)).size).toBe(1);
  expect(new Set(all.map(({ ids: [, end] }) => end)).size).toBe(3);
  expect((await told()).ids).toEqual(regraded.ids);
});

test('where a mark of 0 is enough, 0 has passed in the gradebook, the statistics and every file', async () => {
  const apart = await makeSchool();
  const { owner, ann, ben, classId: own } = apart;
  const assignmentId = await published(apart, { passMark: 0 });
  const attemptId = await started(ann, assignmentId);
  const input = { submission: await answerFor(attemptId, 'best'), idempotencyKey: attemptId };
  valueOf(await submitAttempt(ann, attemptId, input, monday));
  await db().mark.updateMany({ where: { attemptId }, data: { total: 0, gateFailed: false } });
  const book = must(await getGradebook(owner, own, monday));
  const cellOf = ({ studentId }: { studentId: string }) =>
    must(book.cells.find((cell) => cell.studentId === studentId));
  expect(cellOf(ann)).toMatchObject({ mark: 0, state: 'complete' });
  expect(cellOf(ben)).toMatchObject({ mark: null, state: 'not-started' });
  const statistics = must(await getClassStatistics(owner, own, monday));
  expect(statistics.assignments[0]).toMatchObject({ marks: [0], reached: 1, withoutMark: 2 });
  const [head, row] = read(await exportAttempts(owner, own, byCard, monday));
  expect(must(row)[must(head).indexOf('Passed')]).toBe('yes');
  const end = must(await exportStatements(owner, own, byCard, monday)).at(-1);
  expect([end?.verb.display['en-GB'], end?.result?.success]).toEqual(['passed', true]);
  // Nothing right shows no skill, whatever passes.
  const matrix = must(await getSkillMatrix(owner, own, monday));
  expect(matrix.students[0]?.standings.every(({ inARow }) => inARow === 0)).toBe(true);
});

describe('the folder of one student', () => {
  const opened = async (accommodations: boolean) => {
    const zip = must(await exportStudentZip(school.owner, studentIdOf(2), { accommodations }, now));
    const files = Object.entries(unzipSync(zip.bytes));
    return {
      fileName: zip.fileName,
      files: Object.fromEntries(
        files.map(([name, bytes]) => [name, Buffer.from(bytes).toString('utf8')]),
      ),
    };
  };

  test('holds what is kept, the marks and what is what, and nothing of anybody else', async () => {
    const { fileName, files } = await opened(false);
    expect(fileName).toBe('student-card-2.zip');
    expect(Object.keys(files).sort()).toEqual(['data.json', 'marks.csv', 'read-me.txt']);
    const kept: unknown = JSON.parse(
      JSON.stringify(await exportStudent(school.owner, studentIdOf(2))),
    );
    expect(JSON.parse(must(files['data.json']))).toEqual(kept);
    const rows = read(must(files['marks.csv']));
    expect(rows.map((row) => row[1])).toEqual(['Name', awkward]);
    expectSafe(rows);
    const book = must(await getGradebook(school.owner, classId(), now));
    const own = book.cells.filter(({ studentId }) => studentId === studentIdOf(2));
    expect(rows[1]?.filter((_, index) => index >= 2 && index % 2 === 0)).toEqual(
      own.map(({ mark }) => (mark === null ? '' : String(shownMark(mark)))),
    );
    const all = Object.values(files).join('\n');
    for (const other of ['HYPERLINK', studentIdOf(1), studentIdOf(3), 'argon2', 'tokenHash'])
      expect(all).not.toContain(other);
  });

  test('tells of accommodations only when that was chosen, and says which it was', async () => {
    const without = await opened(false);
    expect(without.files['data.json']).not.toContain('accommodation');
    expect(without.files['read-me.txt']).toContain('are left out');
    const withThem = await opened(true);
    expect(withThem.files['data.json']).toContain('"accommodation"');
    expect(withThem.files['read-me.txt']).toContain('are in it');
  });
});
