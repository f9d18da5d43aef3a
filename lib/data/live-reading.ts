import 'server-only';
import type { Viewer } from '../auth/policy';
import { course, type LessonSlug } from '../course/lessons';
import { systemClock, type Clock } from './clock';

/**
 * Which lesson's page a student opened last: held in this process's memory for the live board, for a
 * period at most, and never stored. With several processes each knows its own; the board then says less.
 */
type Reading = { lesson: LessonSlug; at: Date };

declare global {
  // Next bundles a page and a route handler apart; they must mean the same list.
  var duskbenchReading: Map<string, Reading> | undefined;
}
const readings = (): Map<string, Reading> => {
  globalThis.duskbenchReading ??= new Map<string, Reading>();
  return globalThis.duskbenchReading;
};

const keptMs = 60 * 60_000;

/** A student opened a lesson's page; of anybody else nothing is noted. */
export function noteReading(viewer: Viewer, slug: string, clock: Clock = systemClock): void {
  const lesson = course.find((one) => one.slug === slug)?.slug;
  if (viewer.kind !== 'student' || lesson === undefined) return;
  const at = clock.now();
  for (const [studentId, known] of readings()) {
    if (at.getTime() - known.at.getTime() > keptMs) readings().delete(studentId);
  }
  readings().set(viewer.studentId, { lesson, at });
}

/** Internal: for lib/data/live-rows.ts, after authorising. */
export function readingOf(studentId: string, since: Date): Reading | null {
  const known = readings().get(studentId);
  return known === undefined || known.at < since ? null : known;
}
