import { choice, match, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  drawSky,
  monthName,
  siderealDegPerHour,
  skyOver,
  type DrawnSky,
  type SkyStar,
} from './drawn-sky';
import type { Random } from '../../variants/random';
import { hoursEarlier, sameHourLater } from './same-hour-later';
import { clockTime, span, whereabouts } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

const stars = [
  'Sirius',
  'Rigel',
  'Regulus',
  'Spica',
  'Arcturus',
  'Vega',
  'Altair',
  'Deneb',
  'Aldebaran',
];

function minutesEarlier({ random }: ItemDraw) {
  const days = random.integer(3, 24);
  const start = 10 * random.integer(120, 140);
  const name = pickOne(random, stars);
  const key = 60 * hoursEarlier(days);
  return numeric({
    prompt: `Tonight ${name} crosses the meridian at ${clockTime(start)}. How many minutes earlier does it cross in ${String(days)} days?`,
    unit: 'minutes',
    key,
    tolerance: { mode: 'absolute', full: Math.max(1, days / 6), zero: 2 * days },
    explanation: `Each night it is about four minutes earlier: ${String(days)} × 4 is ${String(4 * days)}. To the second it is 3 minutes 56, and that makes ${String(Math.round(key))} minutes.`,
    slips: [
      {
        gives: 0,
        misconception: 'same-hours-all-year',
        reason:
          'A star does not keep the same hours. The sky turns once in 23 hours and 56 minutes.',
      },
      { gives: days, reason: 'That is a minute a day. It is about four.' },
      {
        gives: 15 * days,
        reason:
          '15 is for the degrees that the sky turns in an hour. Here it is four minutes a day.',
      },
    ],
  });
}

/** Hours, and the time of year that is worth as much. */
const worths = [
  { hours: 1, right: 'two weeks', half: 'one week', twice: 'a month' },
  { hours: 1.5, right: 'three weeks', half: 'ten days', twice: 'six weeks' },
  { hours: 2, right: 'a month', half: 'two weeks', twice: 'two months' },
  { hours: 3, right: 'six weeks', half: 'three weeks', twice: 'three months' },
  { hours: 4, right: 'two months', half: 'a month', twice: 'four months' },
  { hours: 6, right: 'three months', half: 'six weeks', twice: 'half a year' },
] as const;

function whenItStandsThere({ random }: ItemDraw) {
  const { hours, right, half, twice } = pickOne(random, worths);
  const later = random.integer(0, 1) === 1;
  const [way, against] = later ? ['ago', 'from now'] : ['from now', 'ago'];
  const { sky, star } = skyWithStar(random);
  const other = sky.clockMinutes + 60 * (later ? hours : -hours);
  const text = (words: string, when: string) => `About ${words} ${when}`;
  return choice({
    prompt: `${sky.where}, ${sky.when}. ${star.name} stands ${whereabouts(sky.at(star))}. About when in the year does it stand there at ${clockTime(other)}?`,
    explanation: `A star is two hours earlier each month. ${span(60 * hours)} ${later ? 'later' : 'earlier'} in the night is worth ${right}: ${text(right, way).toLowerCase()}.`,
    right: {
      text: text(right, way),
      reason: `${span(60 * hours)} are worth ${right}: two hours a month.`,
    },
    wrong: [
      {
        text: text(right, against),
        reason: `A star gets earlier as the days go by, not later. So it must be ${way}.`,
        misconception: 'sky-turns-the-other-way',
      },
      { text: text(half, way), reason: `That is worth ${span(30 * hours)}.` },
      { text: text(twice, way), reason: `That is worth ${span(120 * hours)}.` },
      {
        text: 'Never: each star keeps its own hour',
        reason:
          'It does not. The sky turns in 23 hours and 56 minutes, so each star is earlier every night.',
        misconception: 'same-hours-all-year',
      },
    ],
  });
}

function skyWithStar(random: Random): { sky: DrawnSky; star: SkyStar } {
  for (;;) {
    const sky = drawSky(random);
    const star = random.pick(
      sky.stars.filter((one) => {
        const { altitudeDeg } = sky.at(one);
        return one.magnitude < 1.7 && altitudeDeg > 12 && altitudeDeg < 75;
      }),
    );
    if (star !== undefined) return { sky, star };
  }
}

/** How far from a whole month a crossing may lie, in months: no other month is then in question. */
const clearOfAMonth = 0.25;

/** Well up where it crosses the meridian, and not so near the pole that it crosses it twice a night. */
const climbs = ({ declinationDeg }: SkyStar, latitudeDeg: number): boolean =>
  90 - Math.abs(latitudeDeg - declinationDeg) > 10 &&
  Math.abs(declinationDeg) < 90 - Math.abs(latitudeDeg);

function monthOfTheMeridian({ random }: ItemDraw) {
  for (;;) {
    const month = random.integer(0, 11);
    const clock = random.integer(19, 21);
    const south = random.integer(0, 3) === 0;
    const latitudeDeg = south ? -random.integer(28, 42) : random.integer(34, 56);
    const sky = skyOver(Date.UTC(2026, month, 15, clock), latitudeDeg);
    const pairs = random
      .shuffle(sky.stars.filter((star) => climbs(star, latitudeDeg)))
      .map((star) => ({ star, hours: -star.hourAngleDeg / siderealDegPerHour }))
      .map(({ star, hours }) => ({ star, hours, months: Math.round(hours / 2) }))
      .filter(
        ({ hours, months }) =>
          months >= 1 && months <= 5 && Math.abs(hours / 2 - months) < clearOfAMonth,
      )
      .filter(({ months }, i, all) => all.findIndex((one) => one.months === months) === i)
      .slice(0, 4);
    if (pairs.length < 4) continue;
    const start = 60 * clock;
    return match({
      prompt: `At ${String(Math.abs(latitudeDeg))}° ${south ? 'south' : 'north'}, in mid-${monthName(month)}, these stars cross the meridian at the times given. In which month does each of them cross at ${clockTime(start)}?`,
      explanation: 'Two hours later in the night is one month later in the year.',
      pairs: pairs.map(({ star, hours, months }) => ({
        left: `${star.name}, at ${clockTime(10 * Math.round((start + 60 * hours) / 10))}`,
        right: monthName(month + months),
        reason: `it is about ${String(2 * months)} hours later than ${clockTime(start)}, and that is worth ${months === 1 ? 'one month' : `${String(months)} months`}.`,
      })),
      spare: [6, 0].map((months) => monthName(month + months)),
    });
  }
}

/** Between two sightings of the star, in days: enough to tell them apart. */
const sightingDays = 24;

function sightingsInOrder({ random }: ItemDraw) {
  for (;;) {
    const sky = drawSky(random);
    const shown = [0, 1, 2, 3].map((i) => i * sightingDays);
    const star = random.pick(
      sky.stars.filter((one) => {
        const way = shown.map((days) => sky.at(one, hoursEarlier(days)));
        const words = new Set(way.map(whereabouts));
        return (
          Math.abs(one.declinationDeg) < 35 &&
          words.size === shown.length &&
          way.every(({ altitudeDeg }) => altitudeDeg > 10 && altitudeDeg < 75)
        );
      }),
    );
    if (star === undefined) continue;
    const places = shown.map((days) => sky.at(star, hoursEarlier(days)));
    const clock = clockTime(sky.clockMinutes);
    return order({
      prompt: `${sky.where}, someone noted where ${star.name} stood at ${clock}, on four evenings within three months. Put the notes in order, the earliest date first.`,
      explanation: `At the same hour a star is farther on each night, along its own way across the sky, from east to west. The four evenings were ${String(sightingDays)} days apart.`,
      steps: places.map((at) => capitalised(whereabouts(at))),
      rules: places.slice(1).map((at, i) => ({
        first: i,
        then: i + 1,
        reason: `in ${String(sightingDays)} days the sky turns on by ${String(Math.round(15 * hoursEarlier(sightingDays)))}°, and then it stands ${whereabouts(at)}.`,
      })),
    });
  }
}

export const seasons: ItemFamily = {
  id: 'evening-sky-by-the-month',
  lesson: 'clock-and-place',
  objective: 'seasons',
  skill: 'clock-and-place',
  title: 'Earlier every night',
  version: 2,
  templates: {
    'minutes-earlier': minutesEarlier,
    'same-hour-later': sameHourLater,
    'when-it-stands-there': whenItStandsThere,
    'month-of-the-meridian': monthOfTheMeridian,
    'sightings-in-order': sightingsInOrder,
  },
};
