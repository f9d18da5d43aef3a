export const lights = ['night', 'day'] as const;
/** Whether somebody was watched by night or by day. */
export type Light = (typeof lights)[number];

const dayMs = 24 * 3_600_000;

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
