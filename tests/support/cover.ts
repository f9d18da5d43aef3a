import type { Viewer } from '@/lib/auth/policy';
import type { Clock } from '@/lib/data/clock';
import { checkCoverToken, createCoverLink } from '@/lib/data/cover';
import { monday, valueOf } from './school';

/** A substitute who came in by a link that the teacher made, with the token of that link. */
export async function coverOf(
  teacher: Viewer,
  classId: string,
  clock: Clock = monday,
): Promise<{ viewer: Extract<Viewer, { kind: 'cover' }>; token: string }> {
  const { token } = valueOf(await createCoverLink(teacher, classId, clock));
  const { coverId } = valueOf(await checkCoverToken(token, { device: null, address: null }, clock));
  return { viewer: { kind: 'cover', coverId, classId, displayName: 'Cover teacher' }, token };
}
