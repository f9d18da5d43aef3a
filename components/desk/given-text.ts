import { counted } from '@/lib/wording/count-word';
import { lowerFirst } from '@/lib/wording/capital';

/** What a teacher is about to give, as far as a sentence on it needs to know. */
export type Given = {
  /** Names of the marked parts, in order. */
  parts: readonly string[];
  /** Titles of the lessons to read. */
  lessons: readonly string[];
  className: string;
  studentCount: number;
  /** "6 Dec 2026, 19:30 (Europe/London)"; null without a due time. */
  due: string | null;
  /** "two attempts, the best counts". */
  attempts: string;
};

/** In plain words what will be given, to whom, and when it is due. */
export function givenText({ parts, lessons, ...given }: Given): string {
  const things = [
    ...parts.map((name, index) => (index === 0 ? name : lowerFirst(name))),
    ...(lessons.length === 0
      ? []
      : [
          `${lessons.length === 1 ? 'the lesson' : 'the lessons'} ${inLine(lessons.map((title) => `“${title}”`))} to read`,
        ]),
  ];
  const what = things.length === 0 ? 'Nothing yet' : inLine(things);
  const whom =
    given.studentCount === 0
      ? `for ${given.className}, which has no students yet`
      : `for ${given.studentCount === 1 ? 'the one student' : `all ${String(given.studentCount)} students`} of ${given.className}`;
  const due = given.due === null ? 'No due time' : `Due ${given.due}`;
  const each = parts.length > 1 ? ' for each part' : '';
  const [attempts = '', ...rest] = given.attempts.split(', ');
  return `${what}, ${whom}. ${due}; ${[`${attempts}${each}`, ...rest].join(', ')}.`;
}

/** "a", "a and b", "a, b and c". */
function inLine(things: readonly string[]): string {
  const last = things.at(-1) ?? '';
  return things.length < 2 ? last : `${things.slice(0, -1).join(', ')} and ${last}`;
}

/** "two attempts, the best counts"; no limit: "any number of attempts, the best counts". */
export function attemptsInRules(
  allowed: number | null,
  counting: 'best' | 'last' | 'first' | 'average',
): string {
  if (allowed === 1) return 'one attempt';
  const attempts =
    allowed === null ? 'any number of attempts' : counted(allowed, 'attempt', 'attempts');
  return `${attempts}, the ${counting} counts`;
}
