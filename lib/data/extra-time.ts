import { z } from 'zod';
import { extraTimes, type ExtraTime } from './extra-time-input';

/** The column reads as it was written by this product; a student without a row has none. */
export const readExtraTime = (stored: string | undefined): ExtraTime =>
  z.enum(extraTimes).parse(stored ?? 'none');

/**
 * The time that one student's check has, and whether the sky may be paused in it: whoever is given
 * more time may take it as pauses too (WCAG 2.2, 2.2.1). `minutesAllowed` null: time does not count.
 */
export function timeFor(minutesAllowed: number | null, extraTime: ExtraTime) {
  const mayPause = extraTime !== 'none';
  if (minutesAllowed === null || extraTime === 'untimed') return { minutesAllowed: null, mayPause };
  const factor = extraTime === 'none' ? 1 : Number(extraTime);
  return { minutesAllowed: minutesAllowed * factor, mayPause };
}
