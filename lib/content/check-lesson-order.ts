import type { LessonFrontMatter } from './lesson-front-matter';

/** Between lessons: `next` of one is the other's `previous`, and nothing is its own prerequisite. */
export function checkLessonOrder(
  lessons: ReadonlyMap<string, Pick<LessonFrontMatter, 'previous' | 'next' | 'prerequisites'>>,
): string[] {
  const problems: string[] = [];
  for (const [slug, { previous, next }] of lessons) {
    const after = next === null ? undefined : lessons.get(next);
    if (after !== undefined && after.previous !== slug) {
      problems.push(`"${slug}" is followed by "${next ?? ''}", which does not know it.`);
    }
    const before = previous === null ? undefined : lessons.get(previous);
    if (before !== undefined && before.next !== slug) {
      problems.push(`"${slug}" follows "${previous ?? ''}", which does not know it.`);
    }
  }
  const leadsTo = (from: string, target: string, seen: Set<string>): boolean =>
    (lessons.get(from)?.prerequisites ?? []).some((needed) => {
      if (needed === target) return true;
      if (seen.has(needed)) return false;
      seen.add(needed);
      return leadsTo(needed, target, seen);
    });
  for (const slug of lessons.keys()) {
    if (leadsTo(slug, slug, new Set())) problems.push(`"${slug}" is its own prerequisite.`);
  }
  return problems;
}
