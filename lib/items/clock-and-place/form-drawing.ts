import { formEntries, type FormEntry, type MountForm } from '../../clock/mount-form';
import type { Random } from '../../variants/random';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { monthName } from './drawn-sky';
import { pickOne } from '../../variants/pick-one';

const titles: Readonly<Record<FormEntry, string>> = {
  date: 'Date',
  time: 'Clock',
  zone: 'Zone',
  'summer-time': 'Summer time',
  latitude: 'Latitude',
  longitude: 'Longitude',
};

/** A form filled in rightly, for a summer evening somewhere; no day that reads the same with its month. */
export function drawCard(random: Random): MountForm {
  const month = random.integer(4, 9);
  const day = pickOne(
    random,
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].filter((one) => one !== month),
  );
  const zoneHours = pickOne(random, [-8, -7, -6, -5, -4, 1, 2, 3, 8, 9]);
  // Somewhere in the zone's own part of the Earth, which is 15° of longitude wide.
  const longitude = 15 * zoneHours + random.integer(-6, 6);
  return {
    year: 2027,
    month,
    day,
    hour: random.integer(7, 11) + 12,
    minute: 5 * random.integer(0, 11),
    zoneMinutes: 60 * zoneHours,
    summerTime: true,
    latitudeDegrees: random.integer(30, 58),
    latitudeMinutes: 0,
    latitudeSide: 'N',
    longitudeDegrees: Math.abs(longitude),
    longitudeMinutes: 0,
    longitudeSide: longitude < 0 ? 'W' : 'E',
  };
}

const sideNames = { N: 'north', S: 'south', E: 'east', W: 'west' } as const;
const two = (value: number): string => String(value).padStart(2, '0');
const zoneText = (minutes: number): string =>
  `${String(Math.abs(minutes / 60))} h ${minutes > 0 ? 'ahead of' : 'behind'} UTC`;

/** As a person would have it on paper: month in words, clock in twelve hours. */
export const cardWords = (form: MountForm): string =>
  [
    `${String(form.day)} ${monthName(form.month - 1)} ${String(form.year)}`,
    `${String(form.hour - 12)}:${two(form.minute)} in the evening by the clock`,
    `zone ${zoneText(form.zoneMinutes)}`,
    'summer time on',
    `${String(form.latitudeDegrees)}° ${sideNames[form.latitudeSide]}`,
    `${String(form.longitudeDegrees)}° ${sideNames[form.longitudeSide]}`,
  ].join(', ');

const entered: Readonly<Record<FormEntry, (form: MountForm) => string>> = {
  date: ({ year, month, day }) => `${String(year)}-${two(month)}-${two(day)}`,
  time: ({ hour, minute }) => `${two(hour)}:${two(minute)}`,
  zone: ({ zoneMinutes }) => zoneText(zoneMinutes),
  'summer-time': ({ summerTime }) => (summerTime ? 'on' : 'off'),
  latitude: ({ latitudeDegrees, latitudeSide }) => `${String(latitudeDegrees)}° ${latitudeSide}`,
  longitude: ({ longitudeDegrees, longitudeSide }) =>
    `${String(longitudeDegrees)}° ${longitudeSide}`,
};

/** One row filled in wrongly, as people do, and why that is wrong. */
export function slipIn(
  random: Random,
  card: MountForm,
): { row: FormEntry; form: MountForm; reason: string } {
  const slips: { change: Partial<MountForm>; row: FormEntry; reason: string }[] = [
    {
      row: 'date',
      change: { day: card.month, month: card.day },
      reason: `Day and month are swapped: the form’s date is year, month, day, and the card’s month is ${monthName(card.month - 1)}.`,
    },
    {
      row: 'time',
      change: { hour: card.hour - 12 },
      reason: 'In the evening 12 hours are added to what a clock with hands shows.',
    },
    {
      row: 'zone',
      change: { zoneMinutes: -card.zoneMinutes },
      reason: `Ahead and behind are swapped. The card’s zone is ${zoneText(card.zoneMinutes)}.`,
    },
    {
      row: 'summer-time',
      change: { summerTime: false },
      reason: 'Summer time is on, says the card. Left off, the mount is an hour wrong.',
    },
    {
      row: 'latitude',
      change: { latitudeSide: 'S' },
      reason: 'N and S are swapped. The mount would look for another half of the sky.',
    },
    {
      row: 'longitude',
      change: { longitudeSide: card.longitudeSide === 'E' ? 'W' : 'E' },
      reason: `E and W are swapped. That turns the mount’s sky by ${String(2 * card.longitudeDegrees)}°.`,
    },
  ];
  const { change, ...slip } = pickOne(random, slips);
  return { ...slip, form: { ...card, ...change } };
}

const rowHeight = 40;
const height = 6 * rowHeight + 12;

/** The mount’s form as it is filled in, and each row as a place to point at. */
export function formDrawing(form: MountForm) {
  const entries = formEntries.map((id, index) => ({
    id,
    y: 6 + rowHeight * index,
    text: entered[id](form),
  }));
  const shapes = entries.flatMap(({ id, y, text }): Shape[] => [
    {
      kind: 'rect',
      x: 6,
      y,
      w: 308,
      h: rowHeight - 6,
      round: 5,
      fill: 'panel',
      stroke: 'strong',
      width: 1,
    },
    { kind: 'text', x: 18, y: y + 23, text: titles[id], size: 15, tone: 'soft' },
    { kind: 'text', x: 302, y: y + 23, text, size: 16, anchor: 'end', bold: true },
  ]);
  const drawing: ItemDrawing = {
    width: 320,
    height,
    shapes,
    alternative: `The mount’s form, row by row. ${entries.map(({ id, text }) => `${titles[id]}: ${text}`).join('. ')}.`,
  };
  return {
    drawing,
    rows: entries.map(({ id, y, text }) => ({
      id,
      spot: { x: 150, y: y + (rowHeight - 6) / 2, where: `The row “${titles[id]}”` },
      fits: `${titles[id]}: ${text}.`,
    })),
  };
}
