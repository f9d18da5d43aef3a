import { answersSchema, type Outgoing, type OutgoingAnswer } from '@/lib/mastery/sign-off-note';
import { routes } from '@/lib/routes';
import type { Owner } from './kept-on-device';

export type Sent =
  | { kind: 'answers'; answers: OutgoingAnswer[] }
  /** The teacher who noted it is not signed in on this device any more. */
  | { kind: 'signed-out' }
  /** The class is archived, or is this teacher's no more. */
  | { kind: 'not-allowed' }
  | { kind: 'no-answer' };
export type SendNotes = (items: readonly Outgoing[]) => Promise<Sent>;

/** Longer than that, and a bad connection counts as none: the same notes are sent again. */
const patienceMs = 20_000;

/** Sends to the class's own address, which stays the same over a new version of the product. */
export const sendNotesTo =
  ({ classId, teacherId }: Owner): SendNotes =>
  async (items) => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), patienceMs);
    try {
      const response = await fetch(routes.teacher.classSignOffNotes(classId), {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ assessor: teacherId, items }),
        signal: stop.signal,
        redirect: 'error',
      });
      if (response.status === 401) return { kind: 'signed-out' };
      if (response.status === 404) return { kind: 'not-allowed' };
      const parsed = response.ok ? answersSchema.safeParse(await response.json()) : null;
      return parsed?.success === true
        ? { kind: 'answers', answers: parsed.data.answers }
        : { kind: 'no-answer' };
    } catch {
      // No connection, too slow, or not an answer of ours: all of it is tried again.
      return { kind: 'no-answer' };
    } finally {
      clearTimeout(timer);
    }
  };
