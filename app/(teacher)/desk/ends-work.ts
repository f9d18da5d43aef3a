/** Whether a new due time shuts out, as soon as it is saved, the students who have not started. */
export const endsWork = (
  before: { state: 'draft' | 'published'; policy: { dueAt: string | null } },
  dueAt: string,
  now: Date,
): boolean =>
  before.state === 'published' &&
  hasPassed(dueAt, now) &&
  // A due time that has passed by itself is no change.
  (before.policy.dueAt === null || Date.parse(before.policy.dueAt) !== Date.parse(dueAt));

/** Whether an instant (ISO 8601) is over at another. */
export const hasPassed = (instant: string, now: Date): boolean =>
  Date.parse(instant) <= now.getTime();
