import type { ClassSummary } from '@/lib/data/classes';

/** The eight characters in two halves, easier to read out and to copy. */
export const codeText = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`;

export const roleText: Readonly<Record<ClassSummary['role'], string>> = {
  owner: 'owner',
  teacher: 'teacher',
  observer: 'observer: reading only',
  cover: 'covering today: reading, and letting students in',
};
