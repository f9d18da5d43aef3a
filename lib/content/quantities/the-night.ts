import { lightNeeded } from '../../night/dark-adaptation';
import { dewPointC } from '../../night/dew-point';
import { darkHours, moonlessHours, nightOf } from '../../items/the-night/night-of';
import { duskAt } from '../../items/the-night/predict-the-twilight';
import { packUpSteps } from '../../rehearsal/pack-up';
import type { Quantity } from '../reckoning';

/** Hours after midnight as the minute that a clock shows, counted from midnight. */
const shownMinute = (hours: number): number => Math.round(hours * 60);

/** "16:05" of hours after midnight. */
const clock = (hours: number): string => {
  const minutes = shownMinute(hours);
  return `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
};

/** Hours from midnight of the date to an instant; UTC, on the meridian of Greenwich. */
const hoursOf = (instant: string | null, date: string): number =>
  instant === null
    ? Number.NaN
    : (Date.parse(instant) - Date.parse(`${date}T00:00:00Z`)) / 3_600_000;

/** What the lesson "the-night" asks of the engine beyond what all lessons may. */
export const theNightQuantities: Readonly<Record<string, Quantity>> = {
  /**
   * Minutes from sunset to astronomical dusk; infinite where that never comes. Between the minutes that
   * the clocks show, so that whoever takes one time from the other gets just this.
   */
  'twilight-minutes': {
    takes: 'latitude date',
    digits: 0,
    value: ([latitude = '', date = ''], { figure }) => {
      if (duskAt(figure(latitude), date).minutes === null) return Number.POSITIVE_INFINITY;
      const { sunset, astronomicalDusk } = nightOf(figure(latitude), date);
      return shownMinute(hoursOf(astronomicalDusk, date)) - shownMinute(hoursOf(sunset, date));
    },
  },
  'sunset-clock': {
    takes: 'latitude date',
    digits: 2,
    words: clock,
    value: ([latitude = '', date = ''], { figure }) =>
      hoursOf(nightOf(figure(latitude), date).sunset, date),
  },
  'nautical-clock': {
    takes: 'latitude date',
    digits: 2,
    words: clock,
    value: ([latitude = '', date = ''], { figure }) =>
      hoursOf(nightOf(figure(latitude), date).nauticalDusk, date),
  },
  'dark-clock': {
    takes: 'latitude date',
    digits: 2,
    words: clock,
    value: ([latitude = '', date = ''], { figure }) =>
      hoursOf(nightOf(figure(latitude), date).astronomicalDusk, date),
  },
  'dark-hours': {
    takes: 'latitude date',
    digits: 0,
    value: ([latitude = '', date = ''], { figure }) => darkHours(nightOf(figure(latitude), date)),
  },
  'moonless-hours': {
    takes: 'latitude date',
    digits: 0,
    value: ([latitude = '', date = ''], { figure }) =>
      moonlessHours(nightOf(figure(latitude), date)),
  },
  /** Degrees Celsius, of air at a temperature and a relative humidity in per cent. */
  'dew-point': {
    takes: 'temperature humidity',
    digits: 0,
    value: ([airC = '', humidity = ''], { figure }) => dewPointC(figure(airC), figure(humidity)),
  },
  /** Times the light that an eye at its best needs, after minutes in the dark. */
  'eye-needs': {
    takes: 'minutes',
    digits: 0,
    words: (times) => String(Number(times.toPrecision(2))),
    value: ([minutes = ''], { figure }) => lightNeeded(figure(minutes)),
  },
  /** How many steps there are to packing up. */
  'pack-up-steps': { takes: '', digits: 0, value: () => packUpSteps.length },
};
