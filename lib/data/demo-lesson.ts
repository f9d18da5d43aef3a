import 'server-only';
import type { Viewer } from '../auth/policy';
import { createAssignment, publishAssignment } from './assignments';
import type { Clock } from './clock';
import { demoAssignment, demoPart } from './demo-evening';
import type { DemoAttempt } from './demo-diary';
import { must, work } from './demo-work';
import type { Place } from './places';

/** What the first students of the roster did of the two parts; the others have not begun. */
const done: readonly (readonly [DemoAttempt, DemoAttempt?])[] = [
  ['best', 'middling'],
  ['middling', 'under-way'],
  ['poor'],
];

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
  for (const [index, parts] of done.entries()) {
    const viewer = students[index];
    if (viewer === undefined) continue;
    for (const [part, skill] of parts.entries()) {
      const start = -1.5 + index / 10 + part / 2;
      if (skill !== undefined)
        await work(viewer, assignmentId, skill, hours(start), hours(start + 0.2), part + 1);
    }
  }
}
