import type { TrailLine } from '@/lib/data/audit-trail';
import { markText } from '../mark-text';
import { zonedTimeText } from '../zoned-time';

type Values = TrailLine['before'];

const what: Readonly<Record<TrailLine['action'], string>> = {
  'mark-overridden': 'Mark set by hand',
  excused: 'Excuse',
  'due-extended': 'Own due time',
  regraded: 'Marked again',
  returned: 'Given back for another try',
  'return-taken-back': 'Giving back taken back',
  commented: 'Comment',
  undone: 'Undone',
};

const gradedText = ({ total, gateFailed, graderVersion }: Values): string =>
  total === undefined
    ? 'no mark'
    : [
        markText(total),
        gateFailed === true ? ', safety gate failed' : '',
        graderVersion === undefined ? '' : `, grader ${String(graderVersion)}`,
      ].join('');

const quoted = (text: string | null | undefined): string =>
  text === null || text === undefined ? 'none' : `“${text}”`;

/** One side of a line, in the words of what it is about. */
function side(action: TrailLine['action'], values: Values, timeZone: string): string {
  switch (action) {
    case 'mark-overridden':
      return values.mark === null || values.mark === undefined
        ? 'computed mark'
        : markText(values.mark);
    case 'excused':
      return values.excused === true ? 'excused' : 'counts';
    case 'due-extended':
      return values.dueAt === null || values.dueAt === undefined
        ? 'the class’s'
        : zonedTimeText(values.dueAt, timeZone);
    case 'regraded':
      return gradedText(values);
    case 'returned':
    case 'return-taken-back':
      return values.returnedAt === null || values.returnedAt === undefined
        ? 'handed in'
        : 'given back';
    case 'commented':
      return quoted(values.text);
    case 'undone':
      return '';
  }
}

/** A line of the trail as a teacher reads it: what was done, from what, to what. */
export function trailWords(
  line: Pick<TrailLine, 'action' | 'before' | 'after'>,
  timeZone: string,
): { what: string; before: string; after: string } {
  const { action, before, after } = line;
  const about = action === 'undone' ? (after.undoneAction ?? action) : action;
  return {
    what:
      action === 'undone' && about !== 'undone'
        ? `Undone: ${what[about].toLowerCase()}`
        : what[action],
    before: side(about, before, timeZone),
    after: side(about, after, timeZone),
  };
}
