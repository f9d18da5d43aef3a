import 'server-only';
import type { Viewer } from '../auth/policy';
import { createAssignment, publishAssignment } from './assignments';
import { saveDraft, startAttempt, submitAttempt } from './attempts';
import { createClass } from './classes';
import { fixedClock, type Clock } from './clock';
import { db } from './db';
import { defaultPlace } from './default-evening';
import { demoChoice, type DemoSkill } from './demo-choice';
import { demoAssignment } from './demo-evening';
import { excuse, extendDue } from './gradebook';
import { searchPlaces } from './places';
import type { Result } from './result';
import { addStudents, issueCards } from './roster';
import { pairVariantSchema } from './lab-tasks/stored-pair';
import { storedAnswerKeySchema } from './lab-tasks/stored-sky';

const classCode = 'HLNBANK2';
const pseudonyms = [
  'Alder',
  'Bramble',
  'Cricket',
  'Dipper',
  'Fern',
  'Hazel',
  'Juniper',
  'Lark',
  'Marten',
  'Otter',
  'Rowan',
  'Sorrel',
];
/** A bug or a broken content folder: the demonstration is made of the product's own functions. */
function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`the demonstration could not be made: ${result.problem.message}`);
  return result.value;
}

/** What each student does, by the roster's order; hours before the due time, negative when late. */
const lastWeek: readonly (readonly [skill: DemoSkill, hoursBeforeDue: number][])[] = [
  [['best', 70]],
  [
    ['middling', 60],
    ['best', 20],
  ],
  [
    ['poor', 30],
    ['middling', 3],
  ],
  [['middling', 48]],
  [
    ['middling', 50],
    ['best', 26],
  ],
  [['best', -20]],
  [],
  [['poor', 5]],
  [['best', 90]],
  [],
  [
    ['middling', 44],
    ['middling', 43],
  ],
  [['best', 12]],
];
/** Tonight's so far: finished ones, one with a second attempt begun, two under way, the rest to come. */
const tonight: readonly (DemoSkill | 'under-way')[][] = [
  ['best'],
  ['poor', 'under-way'],
  [],
  ['middling'],
  [],
  ['under-way'],
  [],
  ['under-way'],
  ['best'],
  [],
  [],
  [],
];

/** The invented class with a week of work behind it; answers its id. */
export async function makeDemoClass(teacher: Viewer, clock: Clock): Promise<string> {
  const now = clock.now();
  const [town] = await searchPlaces('Hebden Bridge, GB', 1);
  const place = town ?? defaultPlace;
  const hours = (count: number): Clock =>
    fixedClock(new Date(now.getTime() + count * 3_600_000).toISOString());
  const { classId } = must(
    await createClass(
      teacher,
      { name: 'Year 8, Hollin Bank School', timeZone: place.timeZone },
      hours(-400),
    ),
  );
  await db().class.update({ where: { id: classId }, data: { isDemo: true, code: classCode } });
  const { studentIds } = must(await addStudents(teacher, classId, pseudonyms));
  must(await issueCards(teacher, classId, 'all', clock));

  const begun = hours(-9 * 24);
  const first = demoAssignment({
    title: 'A first pair',
    place,
    now: begun.now(),
    dueInDays: 7,
    kitId: 'wren',
    siteId: 'open-field',
    templates: ['free-pair', 'partner', 'cloud-bank'],
  });
  const firstId = await publish(teacher, classId, first, begun);
  const dueMs = Date.parse(first.policy.dueAt ?? now.toISOString());
  for (const [index, attempts] of lastWeek.entries()) {
    const viewer = studentViewer(classId, studentIds[index], pseudonyms[index]);
    for (const [skill, hoursBefore] of attempts) {
      const end = dueMs - hoursBefore * 3_600_000;
      // What came late was begun in time.
      const start = Math.min(end - 11 * 60_000, dueMs - 5 * 60_000);
      await work(viewer, firstId, skill, fixedAt(start), fixedAt(end));
    }
  }
  const [absent, late] = [studentIds[9], studentIds[5]];
  if (absent !== undefined) {
    const decision = {
      studentId: absent,
      assignmentId: firstId,
      note: 'Away with the choir that week.',
    };
    must(await excuse(teacher, decision, hours(-30)));
  }

  const second = demoAssignment({
    title: 'Pick the pair for tonight',
    place,
    now,
    dueInDays: 3,
    kitId: 'heron',
    siteId: 'school-yard',
  });
  const secondId = await publish(teacher, classId, second, hours(-6));
  for (const [index, attempts] of tonight.entries()) {
    const viewer = studentViewer(classId, studentIds[index], pseudonyms[index]);
    for (const [round, skill] of attempts.entries()) {
      await work(
        viewer,
        secondId,
        skill,
        hours(-5 + round + index / 10),
        hours(-4.8 + round + index / 10),
      );
    }
  }
  if (late !== undefined && second.policy.dueAt !== null) {
    const dueAt = new Date(Date.parse(second.policy.dueAt) + 2 * 24 * 3_600_000).toISOString();
    const decision = {
      studentId: late,
      assignmentId: secondId,
      dueAt,
      note: 'Two more days, as agreed.',
    };
    must(await extendDue(teacher, decision, hours(-2)));
  }

  const third = demoAssignment({
    title: 'Under a narrow sky',
    place,
    now: hours(7 * 24).now(),
    dueInDays: 5,
    kitId: 'owl',
    siteId: 'between-houses',
  });
  must(await createAssignment(teacher, classId, third, hours(-1)));
  return classId;
}

const fixedAt = (ms: number): Clock => fixedClock(new Date(ms).toISOString());

function studentViewer(classId: string, studentId = '', displayName = ''): Viewer {
  return { kind: 'student', studentId, classId, displayName };
}

async function publish(
  teacher: Viewer,
  classId: string,
  input: unknown,
  clock: Clock,
): Promise<string> {
  const { assignmentId } = must(await createAssignment(teacher, classId, input, clock));
  must(await publishAssignment(teacher, assignmentId, clock));
  return assignmentId;
}

/** One attempt through the very functions that a student's browser calls. */
async function work(
  viewer: Viewer,
  assignmentId: string,
  skill: DemoSkill | 'under-way',
  start: Clock,
  end: Clock,
): Promise<void> {
  const { attemptId } = must(await startAttempt(viewer, assignmentId, start));
  const attempt = await db().attempt.findUniqueOrThrow({
    where: { id: attemptId },
    select: { variant: true, answerKey: true },
  });
  const variant = pairVariantSchema.parse(attempt.variant);
  const answerKey = storedAnswerKeySchema.parse(attempt.answerKey);
  const submission = demoChoice(variant, answerKey, skill === 'under-way' ? 'middling' : skill);
  const picks =
    submission.kind === 'pair' ? submission.stars.slice(0, skill === 'under-way' ? 1 : 2) : [];
  const draft = {
    picks,
    saysNone: submission.kind === 'none-usable',
    proposalIndex: 0,
  };
  must(await saveDraft(viewer, attemptId, { sequence: 1, draft }, end));
  if (skill === 'under-way') return;
  must(
    await submitAttempt(
      viewer,
      attemptId,
      { submission, idempotencyKey: `demo-${attemptId}` },
      end,
    ),
  );
}
