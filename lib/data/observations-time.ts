import 'server-only';
import { lastEveningBegun } from '../mastery/evening';
import type { OutgoingNote } from '../mastery/sign-off-note';
import { instantOfLocalTime } from '../sky/local-time';

/** A device's clock may run ahead by so much; our judgement. */
const aheadMs = 15 * 60_000;
const oldestMs = 400 * 24 * 3_600_000;

/**
 * When it was seen: the device's own time, or eight in the evening (noon by day) of a date on paper, which
 * must have begun by the class's clock. A sentence where it cannot have been then.
 */
export function observedAtOf(note: OutgoingNote, timeZone: string, now: Date): Date | string {
  let instant = note.observedAt;
  const isDate = instant.length === 10;
  if (isDate) {
    if (instant > lastEveningBegun(now, timeZone, note.conditions.light)) {
      return 'This evening is still to come. Look at the date.';
    }
    const hour = note.conditions.light === 'day' ? '12:00' : '20:00';
    const local = instantOfLocalTime(`${instant}T${hour}`, timeZone);
    if (!local.ok) return 'The date of the evening cannot be read. Give it once more.';
    instant = local.instant;
    // Typed in the same evening before eight.
    if (Date.parse(instant) > now.getTime()) return now;
  }
  const at = new Date(instant);
  if (at.getTime() > now.getTime() + aheadMs) {
    return 'By this device’s clock it was noted in the future. Set the clock right, and write it once more.';
  }
  return at.getTime() < now.getTime() - oldestMs
    ? 'This is more than a year ago. Look at the date.'
    : at;
}
