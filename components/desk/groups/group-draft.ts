import type { ClassGroups, GroupStudent } from '@/lib/data/groups';
import { dealOut } from './deal-out';

/** A group as it stands on the page, not yet saved. `key` is the page's own, kept over renames. */
export type DraftGroup = {
  key: string;
  groupId: string | null;
  name: string;
  kitId: string | null;
  studentIds: readonly string[];
  extensionCount: number;
};
export type GroupDraft = readonly DraftGroup[];

export const draftOf = ({ groups }: ClassGroups): GroupDraft =>
  groups.map(({ groupId, name, kitId, students, extensionCount }) => ({
    key: groupId,
    groupId,
    name,
    kitId,
    studentIds: students.map(({ studentId }) => studentId),
    extensionCount,
  }));

/** Everybody of the class by card number. */
export const everybodyIn = ({ groups, withoutGroup }: ClassGroups): GroupStudent[] =>
  [...withoutGroup, ...groups.flatMap(({ students }) => students)].toSorted(
    (one, other) => one.cardNumber - other.cardNumber,
  );

export const aloneIn = (draft: GroupDraft, everybody: readonly GroupStudent[]): GroupStudent[] => {
  const placed = new Set(draft.flatMap(({ studentIds }) => studentIds));
  return everybody.filter(({ studentId }) => !placed.has(studentId));
};

/** Puts students into one group, and so out of any other; null: into none. */
export const moved = (
  draft: GroupDraft,
  studentIds: readonly string[],
  toKey: string | null,
): GroupDraft =>
  draft.map((group) => {
    const others = group.studentIds.filter((id) => !studentIds.includes(id));
    return { ...group, studentIds: group.key === toKey ? [...others, ...studentIds] : others };
  });

/** `whom`: all anew, or only those who stand in no group. */
export function dealt(
  draft: GroupDraft,
  everybody: readonly GroupStudent[],
  whom: 'everybody' | 'the-rest',
): GroupDraft {
  const ids = (students: readonly GroupStudent[]) => students.map(({ studentId }) => studentId);
  return whom === 'the-rest'
    ? dealOut(draft, ids(aloneIn(draft, everybody)))
    : dealOut(
        draft.map((group) => ({ ...group, studentIds: [] })),
        ids(everybody),
      );
}

/** "Group 3": the first number that no group has. */
export function nextGroupName(draft: GroupDraft): string {
  const taken = new Set(draft.map(({ name }) => name));
  let number = 1;
  while (taken.has(`Group ${number}`)) number += 1;
  return `Group ${number}`;
}

/** Whether two drafts say the same of every group: who, where, and with what. */
export const sameDraft = (one: GroupDraft, other: GroupDraft): boolean =>
  JSON.stringify(one.map(factsOf)) === JSON.stringify(other.map(factsOf));

const factsOf = ({ key, name, kitId, studentIds }: DraftGroup) => [
  key,
  name,
  kitId,
  studentIds.toSorted(),
];
