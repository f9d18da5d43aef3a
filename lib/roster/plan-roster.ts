import { sameNameKey } from './student-name';

/** A student as the class has it now. */
export type PresentStudent = {
  studentId: string;
  displayName: string;
  sourcedId: string | null;
  left: boolean;
};

/** One student of a list or file; `row` is where it stands there. */
export type RosterEntry = { row: number; sourcedId: string | null; name: string };

export type RosterSource = {
  /**
   * What the list says of those who are not on it: of a whole class file (bulk), that they have left;
   * of a plain list or a file of changes (delta), nothing.
   */
  completeness: 'whole-class' | 'some';
  /** The names here stay, whatever the file says. */
  keepNames: boolean;
  entries: readonly RosterEntry[];
  /** Ids of those who left, said outright. */
  gone: readonly string[];
};

export type RosterChange =
  | { kind: 'add'; row: number; name: string; sourcedId: string | null }
  | {
      /** 'same' is not quite nothing where the file's id is remembered (`learnsId`). */
      kind: 'rename' | 'back' | 'same';
      row: number;
      studentId: string;
      name: string;
      /** The name until now. */
      was: string;
      sourcedId: string | null;
      learnsId: boolean;
    }
  | { kind: 'leave'; studentId: string; was: string }
  | { kind: 'untouched'; studentId: string; was: string };

/**
 * What importing the list would do. A student is known again by id; failing that, by name, where the
 * file gives an id to exactly one of that name whom nobody gave an id before. Importing twice is
 * importing once.
 */
export function planRoster(
  present: readonly PresentStudent[],
  source: RosterSource,
): RosterChange[] {
  const matched = new Map<RosterEntry, PresentStudent>();
  const taken = new Set<string>();
  const match = (entry: RosterEntry, student: PresentStudent): void => {
    matched.set(entry, student);
    taken.add(student.studentId);
  };

  const byId = new Map(present.map((student) => [student.sourcedId, student]));
  for (const entry of source.entries) {
    const student = entry.sourcedId === null ? undefined : byId.get(entry.sourcedId);
    if (student !== undefined) match(entry, student);
  }
  for (const entry of source.entries) {
    if (matched.has(entry)) continue;
    const key = sameNameKey(entry.name);
    const free = present.filter(
      (student) => !taken.has(student.studentId) && sameNameKey(student.displayName) === key,
    );
    // Those here go before those who left, and those without an id before those with one.
    const best = (wanted: readonly PresentStudent[]): PresentStudent | undefined =>
      wanted.find((student) => !student.left) ?? wanted[0];
    const nameless = free.filter((student) => student.sourcedId === null);
    if (entry.sourcedId === null) {
      const student = best(nameless) ?? best(free);
      if (student !== undefined) match(entry, student);
      continue;
    }
    const rivals = source.entries.filter((other) => sameNameKey(other.name) === key);
    const only = nameless.length === 1 && rivals.length === 1 ? nameless[0] : undefined;
    if (only !== undefined) match(entry, only);
  }

  const gone = new Set(source.gone);
  return [
    ...source.entries.map((entry): RosterChange => {
      const student = matched.get(entry);
      if (student === undefined) return { kind: 'add', ...entry };
      const name =
        source.keepNames || sameNameKey(entry.name) === sameNameKey(student.displayName)
          ? student.displayName
          : entry.name;
      return {
        kind: student.left ? 'back' : name === student.displayName ? 'same' : 'rename',
        row: entry.row,
        studentId: student.studentId,
        name,
        was: student.displayName,
        sourcedId: student.sourcedId ?? entry.sourcedId,
        learnsId: student.sourcedId === null && entry.sourcedId !== null,
      };
    }),
    ...present
      .filter((student) => !taken.has(student.studentId) && !student.left)
      .map(({ studentId, displayName, sourcedId }): RosterChange => {
        const leaves =
          sourcedId !== null && (source.completeness === 'whole-class' || gone.has(sourcedId));
        return { kind: leaves ? 'leave' : 'untouched', studentId, was: displayName };
      }),
  ];
}

export type RosterCounts = Readonly<Record<RosterChange['kind'], number>>;

export function countChanges(changes: readonly RosterChange[]): RosterCounts {
  const counts = { add: 0, rename: 0, back: 0, leave: 0, same: 0, untouched: 0 };
  for (const { kind } of changes) counts[kind] += 1;
  return counts;
}
