import type { FormEntry } from '@/lib/clock/mount-form';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { ClockCard } from '@/lib/variants/bench/clock-and-place/clock-card';
import { dayOfYear, dayWithWeekday, hoursInWords, offsetText, two } from './clock-words';

/** One line of the card; a part that the dew has washed out is null. */
export type CardLine = { label: string; parts: readonly (string | null)[] };

/** The card as somebody wrote it, line by line. */
export function cardLines({
  card,
  change,
  declinationDeg,
  summerTimeMinutes,
}: ClockAndPlaceVariant): CardLine[] {
  const gone = (row: FormEntry): boolean => card.smudged.includes(row);
  const line = (row: FormEntry, label: string, text: string): CardLine => ({
    label,
    parts: [gone(row) ? null : text],
  });
  return [
    line('date', 'Date', dateText(card.date)),
    line('time', card.watch === null ? 'Time' : 'By my watch', timeText(card.time)),
    ...(card.watch === null
      ? []
      : [
          {
            label: 'My watch',
            parts: [`still runs on home time: all told ${aheadText(card.watch.aheadMinutes)}`],
          },
        ]),
    line('zone', 'Clocks here', zoneText(card.zone)),
    line('summer-time', 'Summer time', summerText(card.summer, summerTimeMinutes)),
    { label: 'Where', parts: placeParts(card, gone) },
    ...(change === null
      ? []
      : [
          {
            label: 'Tonight',
            parts: [
              `In the night to ${dayWithWeekday(change.at)} the clocks go ${change.forward ? 'forward' : 'back'}: from ${clockText(change.at)} they are set to ${clockText(change.becomes)}.`,
            ],
          },
        ]),
    ...(declinationDeg === null ? [] : [{ label: 'Compass', parts: [needleText(declinationDeg)] }]),
  ];
}

/** The whole card in one line. */
export const cardInWords = (variant: ClockAndPlaceVariant): string =>
  cardLines(variant)
    .map(({ label, parts }) => `${label}: ${parts.map((part) => part ?? 'washed out').join(', ')}`)
    .join('; ');

function dateText({ style, ...day }: ClockCard['date']): string {
  const figures = (first: number, second: number): string =>
    `${String(first)}/${String(second)}/${String(day.year)}`;
  switch (style) {
    case 'in-words':
      return dayWithWeekday(day);
    case 'day-first':
      return `${figures(day.day, day.month)}, the day first`;
    case 'month-first':
      return `${figures(day.month, day.day)}, the month first`;
  }
}

const clockText = ({ hour, minute }: { hour: number; minute: number }): string =>
  `${two(hour)}:${two(minute)}`;

function timeText({ hour, minute, style }: ClockCard['time']): string {
  return style === 'spoken'
    ? spokenTime(hour, minute)
    : `${String(hour % 12 === 0 ? 12 : hour % 12)}:${two(minute)} ${hour < 12 ? 'a.m.' : 'p.m.'}`;
}

const hourWords = [
  'twelve',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
];
const minuteWords: Readonly<Record<number, string>> = {
  5: 'five',
  10: 'ten',
  15: 'a quarter',
  20: 'twenty',
  25: 'twenty-five',
  30: 'half',
};

/** "twenty to ten in the evening", of a time in whole fives of minutes. */
export function spokenTime(hour: number, minute: number): string {
  const part =
    hour < 5 || hour >= 22
      ? 'at night'
      : hour < 12
        ? 'in the morning'
        : hour < 18
          ? 'in the afternoon'
          : 'in the evening';
  const name = (of: number): string => hourWords[of % 12] ?? '';
  if (minute === 0) return `${name(hour)} o’clock ${part}`;
  if (minute <= 30) return `${minuteWords[minute] ?? ''} past ${name(hour)} ${part}`;
  return `${minuteWords[60 - minute] ?? ''} to ${name(hour + 1)} ${part}`;
}

const aheadText = (minutes: number): string =>
  minutes === 0
    ? 'the same as UTC'
    : `${hoursInWords(Math.abs(minutes))} ${minutes > 0 ? 'ahead of' : 'behind'} UTC`;

const zoneText = ({ minutes, style }: ClockCard['zone']): string =>
  style === 'from-utc'
    ? `${offsetText(minutes)}, summer time not counted`
    : `in winter ${aheadText(minutes)}`;

function summerText(summer: ClockCard['summer'], minutes: number): string {
  const size = minutes === 60 ? '' : `, by ${hoursInWords(minutes)}`;
  switch (summer.style) {
    case 'said':
      return `${summer.on ? 'in force' : 'not in force'} that day${size}`;
    case 'none':
      return 'there is none here';
    case 'dates':
      return `clocks go forward on ${dayOfYear(summer.forward)} and back on ${dayOfYear(summer.back)}${size}`;
  }
}

/** In the order and the way in which they were written. */
function placeParts({ place }: ClockCard, gone: (row: FormEntry) => boolean): (string | null)[] {
  const { latitudeArcmin, longitudeArcmin, style, longitudeFirst } = place;
  const latitude = gone('latitude')
    ? null
    : angleText(latitudeArcmin, ['N', 'S'], style, 'latitude');
  const longitude = gone('longitude')
    ? null
    : angleText(longitudeArcmin, ['E', 'W'], style, 'longitude');
  return longitudeFirst ? [longitude, latitude] : [latitude, longitude];
}

function angleText(
  arcmin: number,
  [plus, minus]: readonly [string, string],
  style: ClockCard['place']['style'],
  name: string,
): string {
  const size = Math.abs(arcmin);
  const degrees = `${String(Math.floor(size / 60))}° ${two(size % 60)}′`;
  switch (style) {
    case 'letters':
      return `${degrees} ${arcmin < 0 ? minus : plus}`;
    case 'decimals':
      return `${(size / 60).toFixed(2)}° ${arcmin < 0 ? minus : plus}`;
    case 'signs':
      return `${name} ${arcmin < 0 ? '−' : '+'}${degrees} (${plus} is +)`;
  }
}

/** "The needle points 12.5° west of true north here." */
export const needleText = (declinationDeg: number): string =>
  `the needle points ${String(Math.abs(declinationDeg))}° ${declinationDeg < 0 ? 'west' : 'east'} of true north here`;

/** What whoever wrote the card says when asked what the time meant. */
export function answerWhenAsked({ change }: ClockAndPlaceVariant): string {
  const meant =
    change === null || change.meant === null ? undefined : change.readings[change.meant];
  // Of a plain time there was nothing to ask.
  if (change === null || meant === undefined) {
    return '“It is what my watch said. Is something odd about it?”';
  }
  const by = meant.summerTime ? 'summer' : 'winter';
  if (change.verdict === 'twice') {
    return `“It was the ${meant.summerTime ? 'first' : 'second'} time round: the clocks ${meant.summerTime ? 'had not gone back yet' : 'had already gone back'}, so by ${by} time.”`;
  }
  return meant.summerTime
    ? `“I had not put my watch forward yet. By the new time it was ${clockText(meant)}.”`
    : `“I had put my watch forward before I went out. By the old time it was still ${clockText(meant)}.”`;
}
