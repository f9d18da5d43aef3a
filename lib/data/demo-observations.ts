import 'server-only';
import { createHash } from 'node:crypto';
import type { Viewer } from '../auth/policy';
import type { Skill } from '../course/skills';
import type { GateId } from '../mastery/sign-off-gates';
import type { HelpLevel } from '../mastery/sign-off';
import type { OutgoingNote } from '../mastery/sign-off-note';
import { fixedClock, type Clock } from './clock';
import { must } from './demo-work';
import { recordObservations } from './observations';

type Seen = readonly [student: number, skill: Skill, level: HelpLevel, gate?: GateId];

/** Two evenings outside, three weeks and one week ago; students by their place in the roster. */
const firstEvening: readonly Seen[] = [
  [0, 'assemble', 3],
  [0, 'level', 3],
  [1, 'level', 4],
  [2, 'level', 2],
  [3, 'assemble', 3],
  [3, 'balance', 4, 'tube-let-go'],
  [4, 'level', 3],
  [4, 'power', 3],
];
const secondEvening: readonly Seen[] = [
  [0, 'assemble', 4],
  [0, 'level', 4],
  [0, 'align', 2],
  [1, 'level', 4],
  [1, 'finder', 3],
  [2, 'level', 3],
  [3, 'balance', 3],
  [4, 'level', 4],
];

/** The same by the colleague: at eleven of fifteen alike, and nowhere more generous. */
const firstOfColleague: readonly Seen[] = [
  [0, 'assemble', 3],
  [0, 'level', 3],
  [1, 'level', 3],
  [2, 'level', 2],
  [3, 'assemble', 2],
  [3, 'balance', 4, 'tube-let-go'],
  [4, 'level', 3],
];
const secondOfColleague: readonly Seen[] = [
  [0, 'assemble', 4],
  [0, 'level', 4],
  [0, 'align', 2],
  [1, 'level', 4],
  [1, 'finder', 1],
  [2, 'level', 3],
  [3, 'balance', 3],
  [4, 'level', 3],
];

/** What the invented teacher and the colleague saw at the telescope. */
export async function makeDemoObservations(
  teacher: Viewer,
  colleague: Viewer,
  classId: string,
  studentIds: readonly string[],
  clock: Clock,
): Promise<void> {
  const eightOn = (daysAgo: number): string => {
    const day = new Date(clock.now().getTime() - daysAgo * 24 * 3_600_000);
    return `${day.toISOString().slice(0, 10)}T20:00:00.000Z`;
  };
  const notes = (who: string, seen: readonly Seen[], daysAgo: number): OutgoingNote[] =>
    seen.flatMap(([index, skill, level, gate]) => {
      const studentId = studentIds[index];
      if (studentId === undefined) return [];
      const key = createHash('sha256')
        .update(`demo ${who} ${studentId} ${skill} ${daysAgo}`)
        .digest('hex');
      return [
        {
          kind: 'note',
          key: key.slice(0, 32),
          studentId,
          skill,
          level,
          note: '',
          gates: gate === undefined ? [] : [gate],
          prompts: 4 - level,
          instrument: 'Wren',
          conditions: { light: 'night', cloud: 'some' },
          over: null,
          observedAt: eightOn(daysAgo),
        },
      ];
    });
  for (const [who, viewer, seen, daysAgo] of [
    ['teacher', teacher, firstEvening, 21],
    ['colleague', colleague, firstOfColleague, 21],
    ['teacher', teacher, secondEvening, 7],
    ['colleague', colleague, secondOfColleague, 7],
  ] as const) {
    const evening = notes(who, seen, daysAgo);
    must(await recordObservations(viewer, classId, evening, fixedClock(eightOn(daysAgo))));
  }
}
