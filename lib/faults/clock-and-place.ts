import { believedSky, type EnteredSettings } from '../clock/entered-settings';
import type { SkyFrame } from '../sky/sky-frame';
import type { Evening, Fault } from './faulty-evening';

/*
 * What was told wrongly to the computer. Each turns or tilts the whole believed sky; the settings card
 * shows what was entered.
 */

const believedSkies = new WeakMap<SkyFrame, Map<string, SkyFrame | null>>();

/** An ephemeris is slow, and the same slip is tried with many a star. Null for a date that is none. */
function believedOnce({ frame, place }: Evening, entered: EnteredSettings): SkyFrame | null {
  const known = believedSkies.get(frame) ?? new Map<string, SkyFrame | null>();
  believedSkies.set(frame, known);
  const key = JSON.stringify(entered);
  const before = known.get(key);
  if (before !== undefined) return before;
  const sky = believedSky(entered, place.elevationM);
  const made = sky.ok ? sky.frame : null;
  known.set(key, made);
  return made;
}

/** The evening with something else entered; none where the computer would not take it. */
function entering(evening: Evening, slips: readonly Partial<EnteredSettings>[]): Evening[] {
  return slips.flatMap((slip) => {
    const entered = { ...evening.entered, ...slip };
    const believed = believedOnce(evening, entered);
    return believed === null
      ? []
      : [{ ...evening, entered, setup: { ...evening.setup, believed } }];
  });
}

export const summerTime: Fault = {
  id: 'summer-time',
  cures: ['correct-summer-time'],
  forms: (evening) => entering(evening, [{ summerTime: !evening.entered.summerTime }]),
};

/** Hours by which a zone is mistaken for a neighbour's. */
const zoneSlipHours = [-3, -2, -1, 1, 2, 3];
/** Offsets of the world's zones, minutes: Baker Island to the Line Islands. */
const zones = { first: -720, last: 840 };

export const timeZone: Fault = {
  id: 'time-zone',
  cures: ['correct-time-zone'],
  forms: (evening) =>
    entering(
      evening,
      zoneSlipHours
        .map((hours) => evening.entered.zoneOffsetMinutes + 60 * hours)
        .filter((minutes) => minutes >= zones.first && minutes <= zones.last)
        .map((zoneOffsetMinutes) => ({ zoneOffsetMinutes })),
    ),
};

export const date: Fault = {
  id: 'date',
  cures: ['correct-date'],
  forms: (evening) =>
    entering(
      evening,
      wrongDates(evening.entered.localTime).map((localTime) => ({ localTime })),
    ),
};

/** The day before and after, the month before and after, and day and month exchanged. */
function wrongDates(localTime: string): string[] {
  const [year = NaN, month = NaN, day = NaN] = localTime.slice(0, 10).split('-').map(Number);
  const clock = localTime.slice(10);
  const text = (y: number, m: number, d: number): string =>
    new Date(Date.UTC(y, m - 1, d)).toISOString().slice(0, 10) + clock;
  const sameYear = (m: number, d: number): string[] =>
    // The 31st of a month that has none is not taken by any computer.
    m < 1 || m > 12 || new Date(Date.UTC(year, m - 1, d)).getUTCDate() !== d
      ? []
      : [text(year, m, d)];
  return [
    text(year, month, day - 1),
    text(year, month, day + 1),
    ...sameYear(month - 1, day),
    ...sameYear(month + 1, day),
    ...(day === month ? [] : sameYear(day, month)),
  ];
}

export const longitudeSign: Fault = {
  id: 'longitude-sign',
  cures: ['correct-longitude'],
  forms: (evening) => entering(evening, [{ longitudeDeg: -evening.entered.longitudeDeg }]),
};

export const latitude: Fault = {
  id: 'latitude',
  cures: ['correct-latitude'],
  forms: (evening, { tiltDeg }) => {
    const { latitudeDeg } = evening.entered;
    const whole = Math.round(tiltDeg);
    return entering(
      evening,
      [latitudeDeg - whole, latitudeDeg + whole, latitudeDeg - 10, latitudeDeg + 10]
        .filter((wrong) => Math.abs(wrong) <= 89)
        .map((wrong) => ({ latitudeDeg: wrong })),
    );
  },
};
