import 'server-only';
import type { Viewer } from '../auth/policy';
import { course } from '../course/lessons';
import { createAssignment, publishAssignment } from './assignments';
import type { Clock } from './clock';
import { demoAssignment, demoPart } from './demo-evening';
import type { DemoAttempt } from './demo-diary';
import { answerOne } from './demo-questions';
import { must, work } from './demo-work';
import type { Place } from './places';
import { openOrAsk } from './question-keeping';

/** From when to when somebody worked at a part, in minutes before now; the end is the last step. */
type Piece = readonly [skill: DemoAttempt, fromMinutes: number, toMinutes: number];

/**
 * What the students did of the two parts, by the roster's order: the lesson is under way as the class is
 * made, with somebody in every state. The live board shows that hour again and again.
 */
const done: readonly (readonly Piece[])[] = [
  [
    ['best', 44, 31],
    ['middling', 28, 5],
  ],
  [
    ['middling', 42, 24],
    ['under-way', 22, 9],
  ],
  [['poor', 40, 3]],
  [['under-way', 14, 0.5]],
  [],
  [['under-way', 12, 1]],
  [],
  [
    ['best', 38, 20],
    ['under-way', 15, 0.5],
  ],
  [['best', 35, 2]],
];
/** And who practises on questions meanwhile: three wrong in a row; one that was just asked. */
const [stumbles, asks] = [10, 9];
const finderByDay = course[5];

/** A lesson's worth of work: a text to read, its lab, and questions on it. */
export async function makeDemoLesson({
  teacher,
  classId,
  students,
  place,
  now,
  hours,
}: {
  teacher: Viewer;
  classId: string;
  students: readonly Viewer[];
  place: Place;
  now: Date;
  /** The clock so many hours from now. */
  hours: (count: number) => Clock;
}): Promise<void> {
  const input = demoAssignment({
    lab: 'put-it-together',
    title: 'A lesson: standing it up',
    more: [{ ...demoPart('lesson-questions', ['standing-it-up']), windowMinutes: 0 }],
    lessons: ['standing-it-up'],
    place,
    now,
    dueInDays: 7,
    kitId: 'heron',
    siteId: 'school-yard',
  });
  const { assignmentId } = must(await createAssignment(teacher, classId, input, hours(-2)));
  must(await publishAssignment(teacher, assignmentId, hours(-2)));
  const minutesAgo = (minutes: number) => hours(-minutes / 60);
  for (const [index, pieces] of done.entries()) {
    const viewer = students[index];
    if (viewer === undefined) continue;
    for (const [place, [skill, from, to]] of pieces.entries()) {
      await work(viewer, assignmentId, skill, minutesAgo(from), minutesAgo(to), place + 1);
    }
  }
  const write = { studentId: studentIdOf(students[stumbles]), lesson: finderByDay };
  for (const minutes of [8, 5, 2]) {
    await answerOne(write, false, minutesAgo(minutes).now().getTime());
  }
  await openOrAsk(studentIdOf(students[asks]), { lesson: 'standing-it-up' }, minutesAgo(1));
}

function studentIdOf(viewer: Viewer | undefined): string {
  if (viewer?.kind !== 'student') throw new Error('the demonstration has too few students');
  return viewer.studentId;
}
