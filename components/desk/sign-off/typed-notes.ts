import { skills, type Skill } from '@/lib/course/skills';
import type { Conditions, OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { SeenNote } from '@/lib/mastery/sign-off-queue';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { readTypedLevel, type TypedLevel } from '@/lib/mastery/typed-level';
import { newKey } from './new-key';

/** What stands in the cells of the typing table, by student and skill. */
export type Typed = Readonly<Record<string, string>>;

export const typedName = ({ id }: Pick<SignOffStudent, 'id'>, skill: Skill): string =>
  `${id} ${skill}`;

export const isFilled = (text: string): boolean => text.trim() !== '';

/** As the paper forms lie in a pile: group by group, and last who is in none. */
export function inPaperOrder(
  students: readonly SignOffStudent[],
  groups: readonly SignOffGroup[],
): SignOffStudent[] {
  const placeOf = ({ groupId }: SignOffStudent): number => {
    const place = groups.findIndex(({ id }) => id === groupId);
    return place === -1 ? groups.length : place;
  };
  return students.toSorted(
    (one, other) => placeOf(one) - placeOf(other) || one.cardNumber - other.cardNumber,
  );
}

type TypedCell = { skill: Skill; student: SignOffStudent; read: TypedLevel };

export const typedCells = (typed: Typed, students: readonly SignOffStudent[]): TypedCell[] =>
  skills.flatMap((skill) =>
    students.map((student) => {
      const read = readTypedLevel(typed[typedName(student, skill)] ?? '', skill);
      return { skill, student, read };
    }),
  );

/** The notes that the cells say, all of one evening. */
export function notesFromTyped(
  cells: readonly TypedCell[],
  evening: {
    /** YYYY-MM-DD, as written on the paper. */
    date: string;
    conditions: Conditions;
    telescopeOf: (student: SignOffStudent) => string;
    notesOf: (studentId: string, skill: Skill) => readonly SeenNote[];
  },
): OutgoingNote[] {
  const { date, conditions, telescopeOf, notesOf } = evening;
  return cells.flatMap(({ skill, student, read }): OutgoingNote[] => {
    if (read.kind !== 'level') return [];
    const { level, gates, prompts } = read;
    const keys = notesOf(student.id, skill)
      .filter((note) => note.waiting && note.mine && note.evening === date)
      .map(({ key }) => key);
    return [
      {
        kind: 'note',
        key: newKey(),
        studentId: student.id,
        skill,
        level,
        gates,
        prompts,
        note: '',
        instrument: telescopeOf(student),
        conditions,
        observedAt: date,
        // Typed twice before it was sent; what is on the server already is asked about.
        over: keys.length === 0 ? null : { keys, how: 'replace' },
      },
    ];
  });
}
