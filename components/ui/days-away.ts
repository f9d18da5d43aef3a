/** Days since 1970 on the zone's calendar. */
function calendarDay(timeZone: string, at: Date): number {
  // en-CA writes the date as 2026-12-05.
  const date = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(at);
  return Math.round(Date.parse(`${date}T00:00:00Z`) / 86_400_000);
}

/**
 * "today", "tomorrow", "in 3 days", "yesterday", "4 days ago": by the calendar of the zone, an IANA
 * name, so that what comes later today is never "tomorrow".
 */
export function daysAway(at: Date, timeZone: string, now: Date): string {
  const days = calendarDay(timeZone, at) - calendarDay(timeZone, now);
  switch (days) {
    case -1:
      return 'yesterday';
    case 0:
      return 'today';
    case 1:
      return 'tomorrow';
  }
  return days > 0 ? `in ${String(days)} days` : `${String(-days)} days ago`;
}
