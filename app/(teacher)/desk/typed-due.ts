import { joinLocalTime } from '@/components/desk/local-time-text';
import type { Problem } from '@/lib/data/result';
import { instantOfLocalTime } from '@/lib/sky/local-time';
import { localTimeProblem } from './moment-text';

/** A due time as a small form sends it, on the clock of that zone; both fields empty: none. */
export function typedDue(
  { date, time }: { date: string; time: string },
  timeZone: string,
): { ok: true; dueAt: string | null } | { ok: false; problem: Problem } {
  if (date === '' && time === '') return { ok: true, dueAt: null };
  if (date === '' || time === '') {
    const message = 'Give both the date and the time, or leave both empty.';
    const field = date === '' ? 'date' : 'time';
    return { ok: false, problem: { code: 'half-due', message, field } };
  }
  const localTime = joinLocalTime(date, time, null);
  const resolved = instantOfLocalTime(localTime, timeZone);
  if (resolved.ok) return { ok: true, dueAt: resolved.instant };
  const { message, candidates } = localTimeProblem(resolved, localTime, timeZone);
  const either = candidates.map(({ label }) => label).join(', ');
  return {
    ok: false,
    problem: {
      code: resolved.reason,
      message: either === '' ? message : `${message} (${either})`,
      field: 'time',
    },
  };
}
