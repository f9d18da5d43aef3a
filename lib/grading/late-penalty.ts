const dayMs = 24 * 3_600_000;

/**
 * What lateness takes: a share of the mark for every started day after the grace, up to a cap. The
 * grace covers work that waited in a queue. All instants in milliseconds; no due time, never late.
 */
export function latePenalty(input: {
  submittedAtMs: number;
  dueAtMs: number | null;
  graceMinutes: number;
  /** 0–1 */
  penaltyPerDay: number;
  /** 0–1 */
  cap: number;
}): { late: boolean; share: number } {
  if (input.dueAtMs === null) return { late: false, share: 0 };
  const lateMs = input.submittedAtMs - input.dueAtMs - input.graceMinutes * 60_000;
  if (lateMs <= 0) return { late: false, share: 0 };
  return {
    late: true,
    share: Math.min(input.cap, input.penaltyPerDay * Math.ceil(lateMs / dayMs)),
  };
}
