import type { RosterChange, RosterCounts } from '@/lib/roster/plan-roster';

/** "3 new, 1 renamed, 2 have left, 21 unchanged" */
export function countsText(counts: RosterCounts): string {
  const parts = [
    counts.add > 0 ? `${String(counts.add)} new` : null,
    counts.rename > 0 ? `${String(counts.rename)} renamed` : null,
    counts.back > 0 ? `${String(counts.back)} back again` : null,
    counts.leave > 0 ? `${String(counts.leave)} ${counts.leave === 1 ? 'has' : 'have'} left` : null,
    counts.same > 0 ? `${String(counts.same)} unchanged` : null,
    counts.untouched > 0 ? `${String(counts.untouched)} not in it, who stay as they are` : null,
  ].filter((part) => part !== null);
  return parts.join(', ');
}

export const changesAnything = (counts: RosterCounts): boolean =>
  counts.add + counts.rename + counts.back + counts.leave > 0;

/** What becomes of one student, in the words of the preview. */
export function changeText(change: RosterChange): string {
  switch (change.kind) {
    case 'add':
      return 'new';
    case 'rename':
      return `renamed, was ${change.was}`;
    case 'back':
      return change.name === change.was
        ? 'back again, with all work'
        : `back again, with all work; was ${change.was}`;
    case 'leave':
      return 'has left: cannot sign in, work is kept';
    case 'same':
      return change.learnsId ? 'unchanged; the list’s id is remembered' : 'unchanged';
    case 'untouched':
      return 'not in the list, stays';
  }
}

/** What the button does, in its own words. */
export function commitText(counts: RosterCounts): string {
  const onlyNew = counts.rename + counts.back + counts.leave === 0;
  return onlyNew
    ? `Add ${String(counts.add)} ${counts.add === 1 ? 'student' : 'students'}`
    : 'Make these changes';
}

/** "3 students added, 1 renamed." */
export function changeSaid(counts: RosterCounts): string {
  const students = counts.add === 1 ? 'student' : 'students';
  const parts = [
    counts.add > 0 ? `${String(counts.add)} ${students} added` : null,
    counts.rename > 0 ? `${String(counts.rename)} renamed` : null,
    counts.back > 0 ? `${String(counts.back)} back again` : null,
    counts.leave > 0 ? `${String(counts.leave)} marked as left` : null,
  ].filter((part) => part !== null);
  return `${parts.join(', ')}.`;
}
