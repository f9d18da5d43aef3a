/** "5 Dec 2026, 19:30" on the clock of a zone. `instant` is UTC, ISO 8601. */
export const zonedTimeText = (instant: string, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone,
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(instant));

/** "5 December 2026" on the calendar of a zone. */
export const zonedDayText = (at: Date, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone,
    day: 'numeric',
    month: 'long',
    year: 'numeric',
  }).format(at);
