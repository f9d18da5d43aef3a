import { longestDisplayName, sameNameKey } from '../student-name';
import type { OneRosterStudent } from './classes-of';

/** How much of a name is taken over: the less, the better for the child. */
export type NameForm = 'initial' | 'given' | 'full';

const shapes: Readonly<Record<NameForm, (student: OneRosterStudent) => string>> = {
  given: ({ givenName }) => givenName,
  initial: ({ givenName, familyName }) =>
    `${givenName} ${String.fromCodePoint(familyName.codePointAt(0) ?? 32)}`.trim(),
  full: ({ givenName, familyName }) => `${givenName} ${familyName}`,
};
const longer: Readonly<Record<NameForm, NameForm | null>> = {
  given: 'initial',
  initial: 'full',
  full: null,
};

/** The name to show of each student; those who would share one get the next longer form. */
export function shownNames(students: readonly OneRosterStudent[], form: NameForm): string[] {
  const names = students.map(shapes[form]);
  const next = longer[form];
  if (next === null) return names.map((name) => name.slice(0, longestDisplayName).trim());
  const counts = new Map<string, number>();
  for (const name of names) counts.set(sameNameKey(name), (counts.get(sameNameKey(name)) ?? 0) + 1);
  const shared = students.filter(
    (_, index) => (counts.get(sameNameKey(names[index] ?? '')) ?? 0) > 1,
  );
  const lengthened = new Map(
    shownNames(shared, next).map((name, index) => [shared[index]?.sourcedId, name]),
  );
  return students.map(
    (student, index) =>
      lengthened.get(student.sourcedId) ?? (names[index] ?? '').slice(0, longestDisplayName).trim(),
  );
}
