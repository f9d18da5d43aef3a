import { zonedTimeText } from '@/components/grading/zoned-time';

/** When a link of today ends: "midnight", as almost always, or the time. */
export function coverEndText(expiresAt: string, timeZone: string): string {
  const text = zonedTimeText(expiresAt, timeZone);
  return text.endsWith(' 00:00') ? 'midnight' : text;
}
