export const lights = ['night', 'day'] as const;
/** Whether somebody was watched by night or by day. */
export type Light = (typeof lights)[number];

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;

/**
 * The evening that a look belongs to, as the date (YYYY-MM-DD) on which it began on the class's clock.
 * A night lasts until noon, so that what is seen at one in the morning is still of the evening before.
 * By day a look belongs to its own date, also before noon.
 *
 * @throws {RangeError} for a zone that is none.
 */
export function eveningOf(at: Date, timeZone: string, light: Light): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    hour: '2-digit',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    calendar: 'gregory',
  }).formatToParts(at);
  const part = (type: Intl.DateTimeFormatPartTypes): string =>
    parts.find((one) => one.type === type)?.value ?? '';
  const date = `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
  if (light === 'day' || Number(part('hour')) >= 12) return date;
  return new Date(Date.parse(`${date}T00:00:00Z`) - dayMs).toISOString().slice(0, 10);
}

/** O'clock. Nobody observes with a class by night before it; our judgement. */
export const eveningsBegin = 16;

/**
 * The latest evening (YYYY-MM-DD) that somebody can have been seen on: tonight's only once it has begun on
 * the class's clock, so that last night's paper is not taken for tonight's in the afternoon.
 *
 * @throws {RangeError} for a zone that is none.
 */
export const lastEveningBegun = (now: Date, timeZone: string, light: Light): string =>
  light === 'day'
    ? eveningOf(now, timeZone, light)
    : // The evening after noon begins at noon: later by as much.
      eveningOf(new Date(now.getTime() - (eveningsBegin - 12) * hourMs), timeZone, light);
