const minutesBetween = (from: string, toMs: number): number =>
  Math.max(0, Math.floor((toMs - Date.parse(from)) / 60_000));

const minutes = (count: number): string => `${String(count)} ${count === 1 ? 'minute' : 'minutes'}`;

/** "for 6 minutes"; empty in the first one. `from` is UTC, ISO 8601. */
export function forHowLong(from: string, nowMs: number): string {
  const count = minutesBetween(from, nowMs);
  return count === 0 ? '' : `for ${minutes(count)}`;
}

/** "just now", "6 minutes ago". */
export function howLongAgo(from: string, nowMs: number): string {
  const count = minutesBetween(from, nowMs);
  return count === 0 ? 'just now' : `${minutes(count)} ago`;
}

/** "10:42:07" on the class's clock. */
export const clockText = (atMs: number, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  }).format(new Date(atMs));
