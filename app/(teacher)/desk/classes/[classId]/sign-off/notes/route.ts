import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { recordObservations } from '@/lib/data/observations';
import { nothingHere } from '../../../../send-file';
import { limitedJson } from './limited-json';

const sentSchema = z.object({ assessor: z.string(), items: z.array(z.unknown()) });

/** A device sends a hundred notes at once, of some 400 bytes and never as much as 4000. */
const mostBytes = 1_000_000;

const answer = (body: object, status: number): Response =>
  Response.json(body, { status, headers: { 'Cache-Control': 'no-store' } });

/**
 * Takes what was noted on a device, each note once. An address of its own, since the page that sends may
 * have been open, or kept, since before the product was last updated.
 */
export async function POST(
  request: Request,
  { params }: { params: Promise<{ classId: string }> },
): Promise<Response> {
  const viewer = await getViewer();
  if (viewer.kind !== 'teacher') return answer({}, 401);
  // A form of another site can send no such type without asking first.
  const type = request.headers.get('content-type') ?? '';
  if (!type.startsWith('application/json')) return answer({}, 415);
  const { classId } = await params;
  const body = await limitedJson(request, mostBytes);
  if (body === 'too-long') return answer({}, 413);
  const sent = sentSchema.safeParse(body);
  if (!sent.success) return answer({}, 400);
  // On a shared device somebody else may have signed in since: their name must not stand under it.
  if (viewer.teacherId !== sent.data.assessor) return answer({}, 401);
  const recorded = await recordObservations(viewer, classId, sent.data.items);
  if (recorded.ok) return answer({ answers: recorded.value }, 200);
  return recorded.problem.code === 'not-found' ? nothingHere() : answer(recorded.problem, 400);
}
