import type { Skill } from '@/lib/course/skills';
import {
  countedDates,
  helpLevels,
  observationsNeeded,
  standingOf,
  type HelpLevel,
  type NeededLevel,
  type Standing,
} from '@/lib/mastery/sign-off';
import { failedGatesText } from '@/lib/mastery/sign-off-gates';
import { notesOf, type Ledger, type SeenNote } from '@/lib/mastery/sign-off-queue';

/** One student and one skill, as the sheet shows it. */
export type CellView = {
  notes: readonly SeenNote[];
  standing: Standing;
  /** Evenings that count towards signing off, and no more than are needed. */
  evenings: number;
  /** The best of the latest evening, as countedDates has it. */
  level: HelpLevel | null;
  waiting: boolean;
  conflict: boolean;
};

export function cellView(
  ledger: Ledger,
  of: { studentId: string; skill: Skill; timeZone: string; needed: NeededLevel },
): CellView {
  const { studentId, skill, timeZone, needed } = of;
  const notes = notesOf(ledger, studentId, skill, timeZone);
  const observations = notes.map(({ evening, level, gates }) => ({
    date: evening,
    level,
    gate: failedGatesText(gates),
  }));
  const latest = notes
    .map(({ evening }) => evening)
    .toSorted()
    .at(-1);
  const levels = notes.filter(({ evening }) => evening === latest).map(({ level }) => level);
  return {
    notes,
    standing: standingOf(observations, needed),
    evenings: Math.min(observationsNeeded, countedDates(observations, needed).length),
    level: helpLevels.findLast((one) => levels.includes(one)) ?? null,
    waiting: notes.some((note) => note.waiting),
    conflict: ledger.waiting.some(
      ({ item, state }) =>
        state.kind !== 'queued' &&
        item.kind === 'note' &&
        item.studentId === studentId &&
        item.skill === skill,
    ),
  };
}

/** "level 3, 1 of 2 evenings" and what else the signs of a cell say. */
export function cellWords(view: CellView, indoors: boolean): string {
  const { level, standing, evenings, notes, waiting, conflict } = view;
  const count = `${String(evenings)} of ${String(observationsNeeded)} evenings`;
  return [
    level === null ? 'nothing noted' : `last at level ${String(level)}, ${count}`,
    standing.signedOff ? 'signed off' : '',
    !standing.signedOff && notes.some(({ gates }) => gates.length > 0) ? 'a gate failed' : '',
    indoors ? 'mastered in the labs' : '',
    waiting ? 'waits to be sent' : '',
    conflict ? 'needs your word' : '',
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/** "Sat 5 Dec". */
export const eveningText = (evening: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
  }).format(new Date(`${evening}T00:00:00Z`));
