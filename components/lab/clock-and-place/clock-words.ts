import type { FormEntry } from '@/lib/clock/mount-form';
import type { MissCause } from '@/lib/clock/split-by-cause';
import type { FormDraft } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import type { TimeReading } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { CardDay } from '@/lib/variants/bench/clock-and-place/clock-card';
import { fistDeg, fistsInWords, toHalfFists } from '@/components/sky/position-words';

/** How the rows of the form are called. */
export const rowNames: Readonly<Record<FormEntry, string>> = {
  date: 'Date',
  time: 'Time',
  zone: 'Hours from UTC',
  'summer-time': 'Summer time',
  latitude: 'Latitude',
  longitude: 'Longitude',
};

export const causeNames: Readonly<Record<MissCause, string>> = {
  ...rowNames,
  start: 'Start direction',
};

export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

export const two = (value: number): string => String(value).padStart(2, '0');

const monthName = (month: number): string => monthNames[month - 1] ?? '';

/** "5 December 2026" */
export const dayInWords = ({ year, month, day }: CardDay): string =>
  `${String(day)} ${monthName(month)} ${String(year)}`;

/** "29 March" */
export const dayOfYear = ({ month, day }: CardDay): string => `${String(day)} ${monthName(month)}`;

/** "Saturday 5 December 2026" */
export function dayWithWeekday(day: CardDay): string {
  const weekday = weekdays[new Date(Date.UTC(day.year, day.month - 1, day.day)).getUTCDay()] ?? '';
  return `${weekday} ${dayInWords(day)}`;
}

/** "1 hour", "5 hours 45 minutes" of a positive number of minutes. */
export function hoursInWords(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  const parts = [
    hours === 0 ? '' : `${String(hours)} hour${hours === 1 ? '' : 's'}`,
    rest === 0 ? '' : `${String(rest)} minutes`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

/** "UTC", "UTC+5:45", "UTC−3:00" */
export function offsetText(minutes: number): string {
  if (minutes === 0) return 'UTC+0:00';
  const size = Math.abs(minutes);
  return `UTC${minutes < 0 ? '−' : '+'}${String(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** "2:30, summer time" */
export const readingText = ({ hour, minute, summerTime }: TimeReading): string =>
  `${two(hour)}:${two(minute)} by ${summerTime ? 'summer' : 'winter'} time`;

/** What stands in a row of the form; "empty" where something is missing. */
export function rowText(row: FormEntry, form: FormDraft): string {
  const all = (...values: readonly unknown[]): boolean => values.every((value) => value !== null);
  switch (row) {
    case 'date': {
      const { year, month, day } = form;
      return year === null || month === null || day === null
        ? 'empty'
        : dayInWords({ year, month, day });
    }
    case 'time':
      return form.hour === null || form.minute === null
        ? 'empty'
        : `${two(form.hour)}:${two(form.minute)}`;
    case 'zone':
      return form.zoneMinutes === null ? 'empty' : offsetText(form.zoneMinutes);
    case 'summer-time':
      return form.summerTime === null ? 'empty' : form.summerTime ? 'on' : 'off';
    case 'latitude':
      return all(form.latitudeDegrees, form.latitudeMinutes, form.latitudeSide)
        ? `${String(form.latitudeDegrees)}° ${two(form.latitudeMinutes ?? 0)}′ ${String(form.latitudeSide)}`
        : 'empty';
    case 'longitude':
      return all(form.longitudeDegrees, form.longitudeMinutes, form.longitudeSide)
        ? `${String(form.longitudeDegrees)}° ${two(form.longitudeMinutes ?? 0)}′ ${String(form.longitudeSide)}`
        : 'empty';
  }
}

/** "15.0°", "0.3°": how far on the sky. */
export const degText = (deg: number): string => `${Math.abs(deg).toFixed(1)}°`;

/** "15.0°, one and a half fists"; without fists where there is less than half of one. */
export function missInWords(deg: number): string {
  const halves = toHalfFists(Math.abs(deg));
  return halves === 0 || Math.abs(deg) < fistDeg / 2
    ? degText(deg)
    : `${degText(deg)}, about ${fistsInWords(halves)}`;
}

/** Names in a row: "date and time", "date, zone and latitude". */
export function listInWords(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

export const rowsInWords = (rows: readonly FormEntry[]): string =>
  listInWords(rows.map((row) => rowNames[row].toLowerCase().replace('utc', 'UTC')));
