import 'server-only';
import { db } from './db';

/** How many checks of an assignment are under way and how many have been handed in. */
export async function countChecks(
  assignmentId: string,
): Promise<{ underWay: number; submitted: number }> {
  const count = (status: 'open' | 'submitted') =>
    db().attempt.count({ where: { assignmentId, mode: 'check', status } });
  const [underWay, submitted] = await Promise.all([count('open'), count('submitted')]);
  return { underWay, submitted };
}
