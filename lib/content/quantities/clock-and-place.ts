import { missDeg } from '../../clock/believed-place';
import { declinationAt } from '../../clock/declination';
import { hourCircleOf } from '../../clock/hour-angle';
import { moonRunsDeg } from '../../clock/split-by-cause';
import { instantOfLocalTime } from '../../sky/local-time';
import { apparentToTrueRefractionDeg } from '../../sky/refraction';
import { siderealDegPerSecond } from '../../sky/turned-frame';
import { directionFromAzAlt } from '../../units/vector';
import type { Quantity, ReckoningSources } from '../reckoning';

/** A missing word cannot happen: the number of words is checked before a quantity is asked. */
const word = (words: readonly string[], index: number): string => words[index] ?? '';

/** The day for which a lesson gives the needle's error; it changes by a few minutes of arc a year. */
const needleDay = '2026-11-25T00:00:00Z';

const siderealDegPerMinute = 60 * siderealDegPerSecond;

/** Hour angle and declination of something seen (refracted) from a latitude. */
function circleOf(words: readonly string[], { place, figure }: ReckoningSources) {
  const { azimuthDeg, altitudeDeg } = place(word(words, 0));
  const trueAltitudeDeg = altitudeDeg - apparentToTrueRefractionDeg(altitudeDeg);
  return hourCircleOf(directionFromAzAlt(azimuthDeg, trueAltitudeDeg), figure(word(words, 1)));
}

/** Degrees on the sky by which a level mount misses with a sky turned westward by so much. */
function turnedMissDeg(words: readonly string[], sources: ReckoningSources, turnDeg: number) {
  const latitudeDeg = sources.figure(word(words, 1));
  return missDeg(
    circleOf(words, sources),
    { turnDeg, latitudeDeg, startDeg: 0 },
    { latitudeDeg, refractionScale: 1 },
  );
}

/** What the lesson "clock-and-place" asks of the engine beyond what all lessons may. */
export const clockAndPlaceQuantities: Readonly<Record<string, Quantity>> = {
  /** Degrees that the sky turns about its pole. */
  'sky-turn': {
    takes: 'minutes',
    digits: 0,
    value: (words, { figure }) => siderealDegPerMinute * figure(word(words, 0)),
  },
  /** Minutes by which a star is earlier after so many days: a day and a turn of the sky are not the same. */
  'minutes-earlier': {
    takes: 'days',
    digits: 0,
    value: (words, { figure }) =>
      (figure(word(words, 0)) * (86_400 * siderealDegPerSecond - 360)) / siderealDegPerMinute,
  },
  /** By how much a mount misses a star when its clock is ahead by so many minutes. */
  'clock-miss': {
    takes: 'place latitude minutes',
    digits: 0,
    value: (words, sources) =>
      turnedMissDeg(words, sources, siderealDegPerMinute * sources.figure(word(words, 2))),
  },
  /** The Moon's own way among the stars in so many minutes. */
  'moon-runs': {
    takes: 'minutes',
    digits: 1,
    value: (words, { figure }) => moonRunsDeg(60_000 * figure(word(words, 0))),
  },
  /** How far a compass needle points from true north; east is positive. */
  needle: {
    takes: 'latitude/longitude',
    digits: 0,
    value: (words) => {
      const [latitudeDeg = Number.NaN, longitudeDeg = Number.NaN] = word(words, 0)
        .split('/')
        .map(Number);
      const at = declinationAt({ latitudeDeg, longitudeDeg, elevationM: 0 }, needleDay);
      return at.ok ? at.declinationDeg : Number.NaN;
    },
    words: (deg) => `${String(Math.round(Math.abs(deg)))}° ${deg < 0 ? 'west' : 'east'}`,
  },
  /** Hours of the day by UTC of a wall clock in a zone; "21:30" in a sentence. */
  'utc-of': {
    takes: 'local-time zone',
    digits: 2,
    value: (words) => {
      const time = instantOfLocalTime(word(words, 0), word(words, 1));
      if (!time.ok) return Number.NaN;
      const at = new Date(time.instant);
      return at.getUTCHours() + at.getUTCMinutes() / 60;
    },
    words: (hours) => {
      const minutes = Math.round(60 * hours);
      return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    },
  },
};
