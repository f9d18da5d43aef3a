import { daysAway } from '@/components/ui/days-away';

/** A moment of a class, as its members say it: in the class's zone, not the device's. */
export type MomentWords = {
  /** "Friday 11 December, 18:00". */
  date: string;
  /** "Friday 11 December". */
  day: string;
  /** "today", "tomorrow", "in 3 days", "yesterday", "4 days ago": by the calendar of the zone. */
  away: string;
  /** "United Kingdom time": which clock is meant. */
  zone: string;
  past: boolean;
};

const part = (timeZone: string, options: Intl.DateTimeFormatOptions, at: Date): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone, ...options }).format(at);

/** `instant` is UTC, ISO 8601; `timeZone` an IANA name. The year is said when it is not this one. */
export function momentInWords(instant: string, timeZone: string, now: Date): MomentWords {
  const at = new Date(instant);
  const year = part(timeZone, { year: 'numeric' }, at);
  const thisYear = part(timeZone, { year: 'numeric' }, now);
  const day = [
    part(timeZone, { weekday: 'long' }, at),
    part(timeZone, { day: 'numeric' }, at),
    part(timeZone, { month: 'long' }, at),
    ...(year === thisYear ? [] : [year]),
  ].join(' ');
  const time = part(timeZone, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }, at);
  const zone = new Intl.DateTimeFormat('en-GB', { timeZone, timeZoneName: 'longGeneric' })
    .formatToParts(at)
    .find(({ type }) => type === 'timeZoneName')?.value;
  return {
    date: `${day}, ${time}`,
    day,
    away: daysAway(at, timeZone, now),
    zone: zone === undefined ? timeZone : zone.replace(/ Time$/, ' time'),
    past: at.getTime() < now.getTime(),
  };
}

/** "Due tomorrow, Friday 11 December, 18:00 (United Kingdom time)"; without a due time, so. */
export function dueInWords(dueAt: string | null, timeZone: string, now: Date): string {
  if (dueAt === null) return 'No due time';
  const { date, away, zone, past } = momentInWords(dueAt, timeZone, now);
  return `${past ? 'Was due' : 'Due'} ${away}, ${date} (${zone})`;
}

/** "Friday 11 December (in 2 days)": for what is not a matter of the hour. */
export function dayInWords(at: Date, timeZone: string, now: Date): string {
  const { day, away } = momentInWords(at.toISOString(), timeZone, now);
  return `${day} (${away})`;
}
