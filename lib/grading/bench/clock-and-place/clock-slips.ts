import {
  entriesThatDiffer,
  latitudeDegOf,
  longitudeDegOf,
  type FormEntry,
  type MountForm,
} from '../../../clock/mount-form';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { ClockAndPlaceSlip } from './clock-and-place-result';

type Found = Pick<ClockAndPlaceSlip, 'code' | 'rows'>;

/** What people are known to get wrong, recognised in the rows that are; one row is told once. */
export function formSlips(form: MountForm, variant: ClockAndPlaceVariant): Found[] {
  const { right, summerTimeMinutes } = variant;
  const wrong = entriesThatDiffer(form, right, summerTimeMinutes);
  const found = [...placeSlips(form, right), ...clockSlips(form, variant)];
  const told: FormEntry[] = [];
  return found.filter(({ rows }) => {
    const fresh = rows.every((row) => wrong.includes(row) && !told.includes(row));
    if (fresh) told.push(...rows);
    return fresh;
  });
}

/** A minute of arc, as places are compared. */
const sameDeg = 1.5 / 60;
const near = (one: number, other: number): boolean => Math.abs(one - other) <= sameDeg;

/** The most telling first. */
function placeSlips(form: MountForm, right: MountForm): Found[] {
  const [latitude, longitude] = [latitudeDegOf(form), longitudeDegOf(form)];
  const [trueLatitude, trueLongitude] = [latitudeDegOf(right), longitudeDegOf(right)];
  const exchanged =
    near(Math.abs(latitude), Math.abs(trueLongitude)) &&
    near(Math.abs(longitude), Math.abs(trueLatitude));
  return [
    ...(exchanged ? [{ code: 'place-exchanged', rows: ['latitude', 'longitude'] } as const] : []),
    ...(near(latitude, -trueLatitude)
      ? [{ code: 'latitude-side', rows: ['latitude'] } as const]
      : []),
    ...(near(longitude, -trueLongitude)
      ? [{ code: 'longitude-side', rows: ['longitude'] } as const]
      : []),
    ...(['latitude', 'longitude'] as const)
      .filter((row) => decimalsAsMinutes(row, form, right))
      .map((row) => ({ code: 'decimals-as-minutes' as const, rows: [row] })),
    { code: 'latitude-off', rows: ['latitude'] },
    { code: 'longitude-off', rows: ['longitude'] },
  ];
}

/** 8.68° entered as 8° 68′ is no minute; 8.41° as 8° 41′ is the trap. */
function decimalsAsMinutes(
  row: 'latitude' | 'longitude',
  form: MountForm,
  right: MountForm,
): boolean {
  const degrees = (of: MountForm) => of[`${row}Degrees`];
  const decimals = (right[`${row}Minutes`] / 60) * 100;
  return degrees(form) === degrees(right) && Math.abs(form[`${row}Minutes`] - decimals) <= 1;
}

const wallMs = ({ year, month, day, hour, minute }: Omit<MountForm, 'zoneMinutes'>): number =>
  Date.UTC(year, month - 1, day, hour, minute);

function clockSlips(
  form: MountForm,
  { right, card, summerTimeMinutes }: ClockAndPlaceVariant,
): Found[] {
  const off = wallMs(form) - wallMs(right);
  const watchOff = wallMs({ ...right, ...card.date, ...card.time }) - wallMs(right);
  const zoneOff = form.zoneMinutes - right.zoneMinutes;
  const rowsOfTime: FormEntry[] = [
    ...(form.year === right.year && form.month === right.month && form.day === right.day
      ? []
      : (['date'] as const)),
    ...(form.hour === right.hour && form.minute === right.minute ? [] : (['time'] as const)),
  ];
  const slips: (Found | false)[] = [
    card.watch !== null &&
      off !== 0 &&
      off === watchOff && { code: 'watch-not-converted', rows: rowsOfTime },
    card.watch !== null &&
      off !== 0 &&
      off === 2 * watchOff && { code: 'watch-wrong-way', rows: rowsOfTime },
    zoneOff !== 0 && zoneOff === -2 * right.zoneMinutes && { code: 'zone-sign', rows: ['zone'] },
    form.summerTime &&
      right.summerTime &&
      zoneOff === summerTimeMinutes && { code: 'summer-hour-twice', rows: ['zone'] },
    {
      code: right.summerTime ? 'summer-hour-forgotten' : 'summer-hour-added',
      rows: ['summer-time'],
    },
    (form.hour + 12) % 24 === right.hour &&
      form.minute === right.minute && { code: 'twelve-hours', rows: ['time'] },
    form.year === right.year &&
      form.day === right.month &&
      form.month === right.day && { code: 'day-and-month', rows: ['date'] },
    Math.abs(dayMs(form) - dayMs(right)) === 86_400_000 && { code: 'day-off', rows: ['date'] },
    { code: 'zone-off', rows: ['zone'] },
    { code: 'time-off', rows: ['time'] },
    { code: 'date-off', rows: ['date'] },
  ];
  return slips.filter((slip) => slip !== false);
}

const dayMs = ({ year, month, day }: MountForm): number => Date.UTC(year, month - 1, day);
