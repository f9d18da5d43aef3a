import { skills, skillTitles, type Skill } from '@/lib/course/skills';
import { eveningOf, eveningsBegin, lastEveningBegun, type Light } from '@/lib/mastery/evening';
import type { Ledger } from '@/lib/mastery/sign-off-queue';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { eveningText } from './cell-view';
import { isFilled, typedName, type Typed } from './typed-notes';
import type { TypingNews } from './use-typing';

const counted = (count: number, one: string): string =>
  `${String(count)} ${one}${count === 1 ? '' : 's'}`;
export const notesText = (count: number): string => counted(count, 'note');

/** What is wrong with a date (YYYY-MM-DD, or empty) that is to stand on a paper form. */
export function wrongDate(
  date: string,
  { now, timeZone, light }: { now: Date; timeZone: string; light: Light },
): string | null {
  if (date === '') return 'Give the date that stands on the paper.';
  if (date <= lastEveningBegun(now, timeZone, light)) return null;
  return date === eveningOf(now, timeZone, 'day')
    ? `Tonight’s form can be typed in from ${String(eveningsBegin)}:00 on.`
    : 'This evening is still to come.';
}

type NamedCell = { student: SignOffStudent; skill: Skill };
const cellText = ({ student, skill }: NamedCell): string =>
  `${student.displayName}, ${skillTitles[skill]}`;

export function unclearText(unclear: readonly NamedCell[]): string {
  const first = unclear.slice(0, 3).map(cellText).join('; ');
  const more = unclear.length > 3 ? ` and ${String(unclear.length - 3)} more` : '';
  return `Unclear: ${first}${more}. A level from 1 to 4, then letters of its gates, then strokes.`;
}

/** What was typed for students who do not stand in the table now. */
export function elsewhereText(
  typed: Typed,
  {
    shown,
    everybody,
    groups,
  }: {
    shown: readonly SignOffStudent[];
    everybody: readonly SignOffStudent[];
    groups: readonly SignOffGroup[];
  },
): string {
  const cells = everybody
    .filter(({ id }) => shown.every((student) => student.id !== id))
    .flatMap((student) =>
      skills.flatMap((skill) => (isFilled(typed[typedName(student, skill)] ?? '') ? student : [])),
    );
  if (cells.length === 0) return '';
  const names = groups.filter(({ id }) => cells.some(({ groupId }) => groupId === id));
  const who = [
    ...names.map(({ name }) => name),
    ...(cells.some(({ groupId }) => groupId === null) ? ['without a group'] : []),
  ];
  return `Typed for others and not saved yet: ${counted(cells.length, 'cell')} (${who.join(', ')}).`;
}

/** What the last saving, or its undo, has done. */
export function newsText(
  news: TypingNews | null,
  ledger: Ledger,
  everybody: readonly SignOffStudent[],
): string {
  if (news === null) return '';
  if (news.kind === 'saved') return savedText(news.keys, ledger);
  const { date, count, left, mixed } = news;
  const stand = count === 1 ? 'stands' : 'stand';
  const where = mixed ? 'in the cells again, beside what you typed since' : 'in the cells again';
  const notBack = everybody.flatMap((student) =>
    skills.flatMap((skill) => {
      const text = left.find(({ name }) => name === typedName(student, skill))?.text;
      return text === undefined ? [] : [`${cellText({ student, skill })}: ${text}`];
    }),
  );
  return [
    count === 0 ? '' : `${counted(count, 'level')} of ${eveningText(date)} ${stand} ${where}.`,
    mixed ? 'Keep those of one evening.' : '',
    notBack.length === 0
      ? ''
      : `Not put back, since something else stands there now: ${notBack.join('; ')}.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** Where the notes of the last saving are. */
function savedText(keys: readonly string[], { waiting }: Ledger): string {
  if (keys.length === 0) return '';
  const here = waiting.filter(({ item }) => keys.includes(item.key));
  const asking = here.filter(({ state }) => state.kind !== 'queued').length;
  const queued = here.length - asking;
  return [
    `${notesText(keys.length)} taken over`,
    queued === 0 ? '' : `${String(queued)} kept on this device, not sent yet`,
    asking === 0 ? '' : `${String(asking)} at the top of the page, for your word`,
    here.length === 0 ? 'all sent' : '',
  ]
    .filter((part) => part !== '')
    .join('; ')
    .concat('.');
}
