import { skyFrameAt } from '../../sky/frame-at';
import { duskAndDawn, sunAltitudeDeg, type NightTimes } from '../../sky/twilight';

/** A night at a northern latitude on the meridian of Greenwich, its clock on UTC. */
export type Night = NightTimes & {
  latitudeDeg: number;
  localDate: string;
  /** From 15:00, every ten minutes for eighteen hours: is the Sun below −18°, is the Moon up? */
  marks: readonly { hours: number; dark: boolean; moonUp: boolean }[];
};

const known = new Map<string, Night>();
const hourMs = 3_600_000;
/** Where the chart of a night begins and how long it is, in hours. */
export const chartFrom = 15;
export const chartHours = 18;

/** The night that begins on a date. The same date and latitude are reckoned once. */
export function nightOf(latitudeDeg: number, localDate: string): Night {
  const key = `${String(latitudeDeg)} ${localDate}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const place = { latitudeDeg, longitudeDeg: 0, elevationM: 0 };
  const times = duskAndDawn({ place, localDate, timeZone: 'UTC' });
  const startMs = Date.parse(`${localDate}T${String(chartFrom)}:00:00Z`);
  const at = (hours: number) => new Date(startMs + hours * hourMs);
  // The Moon climbs evenly enough within half an hour: between, straight lines.
  const moon = Array.from(
    { length: 2 * chartHours + 1 },
    (_, i) => skyFrameAt({ instant: at(i / 2), place }).moon.trueAltitudeDeg,
  );
  const moonAt = (hours: number): number => {
    const i = Math.min(Math.floor(2 * hours), moon.length - 2);
    const [a = 0, b = 0] = [moon[i], moon[i + 1]];
    return a + (b - a) * (2 * hours - i);
  };
  const night: Night = {
    ...times,
    latitudeDeg,
    localDate,
    marks: Array.from({ length: 6 * chartHours }, (_, i) => {
      const hours = (i + 0.5) / 6;
      return {
        hours: chartFrom + hours,
        dark: sunAltitudeDeg(place, at(hours)) < -18,
        // Its upper edge, refracted: as for the Sun.
        moonUp: moonAt(hours) > -0.833,
      };
    }),
  };
  known.set(key, night);
  return night;
}

/** Hours of the night with the Sun below −18°, and of these with the Moon down as well. */
export const darkHours = ({ marks }: Night): number => marks.filter(({ dark }) => dark).length / 6;
export const moonlessHours = ({ marks }: Night): number =>
  marks.filter(({ dark, moonUp }) => dark && !moonUp).length / 6;

/** "17:05" of an instant, on UTC. */
export const clockText = (instant: string): string => {
  const rounded = new Date(Math.round(Date.parse(instant) / 60_000) * 60_000);
  return rounded.toISOString().slice(11, 16);
};

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August'],
  ...['September', 'October', 'November', 'December'],
];
/** "5 December" */
export const dateText = (localDate: string): string => {
  const [, month = '1', day = '1'] = localDate.split('-');
  return `${String(Number(day))} ${months[Number(month) - 1] ?? ''}`;
};
