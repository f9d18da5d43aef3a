import 'server-only';
import type { Viewer } from '../auth/policy';
import { createAssignment, publishAssignment } from './assignments';
import { createClass } from './classes';
import { fixedClock, type Clock } from './clock';
import { db } from './db';
import { defaultPlace } from './default-evening';
import {
  assembly,
  findings,
  lastWeek,
  pseudonyms,
  questions,
  runs,
  tonight,
  type Diary,
} from './demo-diary';
import { joinDemoColleague } from './demo-colleague';
import { demoAssignment } from './demo-evening';
import { makeDemoGroups } from './demo-groups';
import { makeDemoLesson } from './demo-lesson';
import { learners } from './demo-learners';
import { makeDemoObservations } from './demo-observations';
import { answerAsLearner } from './demo-questions';
import { fixedAt, must, studentViewer, work } from './demo-work';
import { excuse, extendDue } from './gradebook';
import { searchPlaces } from './places';
import { addStudents, issueCards } from './roster';

const pickThePair = {
  lab: 'pick-the-pair' as const,
  lessons: ['choosing-alignment-stars' as const],
};
const classCode = 'HLNBANK2';
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
      // Before the first lesson that anybody answered a question of.
      hours(-36 * 24),
    ),
  );
  await db().class.update({ where: { id: classId }, data: { isDemo: true, code: classCode } });
  const { studentIds } = must(await addStudents(teacher, classId, pseudonyms));
  const students = pseudonyms.map((name, index) => studentViewer(classId, studentIds[index], name));
  must(await issueCards(teacher, classId, 'all', clock));
  await makeDemoGroups(teacher, classId, studentIds, hours(-8 * 24));
  const colleague = await joinDemoColleague(classId, hours(-35 * 24));
  await makeDemoObservations(teacher, colleague, classId, studentIds, clock);
  for (const [index, learner] of learners.entries()) {
    const studentId = studentIds[index];
    if (studentId !== undefined) await answerAsLearner(studentId, learner, now);
  }

  const begun = hours(-9 * 24);
  const first = demoAssignment({
    ...pickThePair,
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
    const viewer = students[index];
    if (viewer === undefined) continue;
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

  const together = demoAssignment({
    lab: 'put-it-together',
    title: 'Put it together',
    lessons: [],
    place,
    now,
    dueInDays: 2,
    kitId: 'heron',
    siteId: 'school-yard',
  });
  const togetherId = await publish(teacher, classId, together, hours(-7));

  const second = demoAssignment({
    ...pickThePair,
    title: 'Pick the pair for tonight',
    place,
    now,
    dueInDays: 3,
    kitId: 'heron',
    siteId: 'school-yard',
  });
  const secondId = await publish(teacher, classId, second, hours(-6));
  /** A student after the other, from so many hours before now, an hour from attempt to attempt. */
  const workAll = async (assignmentId: string, diary: Diary, hoursAgo: number) => {
    for (const [index, viewer] of students.entries()) {
      for (const [round, skill] of (diary[index] ?? []).entries()) {
        const start = round - hoursAgo + index / 10;
        await work(viewer, assignmentId, skill, hours(start), hours(start + 0.2));
      }
    }
  };
  await workAll(togetherId, assembly, 6);
  await workAll(secondId, tonight, 5);
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

  const run = demoAssignment({
    lab: 'alignment-run',
    title: 'Alignment run',
    lessons: ['choosing-alignment-stars'],
    place,
    now,
    dueInDays: 4,
    kitId: 'wren',
    siteId: 'open-field',
    templates: ['own-choice', 'mount-proposes', 'first-given'],
  });
  await workAll(await publish(teacher, classId, run, hours(-5)), runs, 4);
  const wentWrong = demoAssignment({
    lab: 'what-went-wrong',
    title: 'What went wrong?',
    lessons: [],
    place,
    now,
    dueInDays: 5,
    kitId: 'heron',
    siteId: 'school-yard',
  });
  await workAll(await publish(teacher, classId, wentWrong, hours(-4)), findings, 3);

  const asked = demoAssignment({
    lab: 'lesson-questions',
    title: 'Questions: level and power',
    lessons: ['level-enough'],
    templates: ['level-enough', 'power-without-smoke'],
    place,
    now,
    dueInDays: 6,
    kitId: 'wren',
    siteId: 'open-field',
  });
  await workAll(await publish(teacher, classId, asked, hours(-3)), questions, 2);

  await makeDemoLesson({ teacher, classId, students, place, now, hours });

  const third = demoAssignment({
    ...pickThePair,
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
