import { sunAltitudeAtDeg, type NightTimes } from '../../sky/twilight';
import type { Random } from '../../variants/random';
import { choice, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawNightChart } from './draw-night';
import { clockText, darkHours, dateText, moonlessHours, nightOf, type Night } from './night-of';
import { predictTheTwilight } from './predict-the-twilight';

const steps =
  'Sunset; civil dusk with the Sun 6° down; nautical dusk at 12°; astronomical dusk at 18°. Only then is it dark.';

const bands = [
  { name: 'Civil twilight', from: 1, to: sunAltitudeAtDeg.civil },
  { name: 'Nautical twilight', from: sunAltitudeAtDeg.civil, to: sunAltitudeAtDeg.nautical },
  {
    name: 'Astronomical twilight',
    from: sunAltitudeAtDeg.nautical,
    to: sunAltitudeAtDeg.astronomical,
  },
  { name: 'Dark night', from: sunAltitudeAtDeg.astronomical, to: -30 },
] as const;

const seenIn: Readonly<Record<string, string>> = {
  'Civil twilight': 'The brightest lights show; one can still read outdoors.',
  'Nautical twilight': 'The bright stars are out, enough for an alignment.',
  'Astronomical twilight': 'Most stars are out; faint smudges still drown in a rest of light.',
  'Dark night': 'The Sun takes no more light from the sky.',
};

function nameTheTwilight({ random }: ItemDraw) {
  const band = pickOne<(typeof bands)[number]>(random, bands);
  // Clear of the limits by a degree.
  const depth = random.integer(Math.max(2, Math.round(-band.from) + 1), Math.round(-band.to) - 1);
  return choice({
    prompt: `The ${pickOne(random, ['evening', 'morning'])} Sun’s middle stands ${String(depth)}° below the level horizon. What is that part of the night called?`,
    explanation: steps,
    right: { text: band.name, reason: seenIn[band.name] ?? steps },
    wrong: bands
      .filter((one) => one !== band)
      .map((one) => ({
        text: one.name,
        reason:
          one.name === 'Dark night'
            ? `Dark night begins at 18°. At ${String(depth)}° the Sun still lights the air above you.`
            : `That is from ${String(Math.max(0, Math.round(-one.from)))}° to ${String(Math.round(-one.to))}° below.`,
        ...(one.name === 'Dark night' ? { misconception: 'dark-at-sunset' as const } : {}),
      })),
  });
}

const dates = [
  ...['2026-10-10', '2026-10-24', '2026-11-13', '2026-11-27', '2026-12-05', '2026-12-18'],
  ...['2027-01-09', '2027-01-23', '2027-02-06', '2027-02-19', '2027-03-05', '2027-03-17'],
] as const;

const someNight = (random: Random): Night =>
  nightOf(pickOne(random, [35, 45, 52]), random.pick(dates) ?? dates[0]);

const eventNames: Readonly<Record<keyof NightTimes, string>> = {
  sunset: 'Sunset',
  civilDusk: 'Civil dusk',
  nauticalDusk: 'Nautical dusk',
  astronomicalDusk: 'Astronomical dusk',
  astronomicalDawn: 'Astronomical dawn',
  nauticalDawn: 'Nautical dawn',
  civilDawn: 'Civil dawn',
  sunrise: 'Sunrise',
};
const events = [
  ...(['sunset', 'civilDusk', 'nauticalDusk', 'astronomicalDusk'] as const),
  ...(['astronomicalDawn', 'nauticalDawn', 'civilDawn', 'sunrise'] as const),
];

function orderTheNight({ random }: ItemDraw) {
  const night = someNight(random);
  const chosen = pickSome(random, events, 5)
    .map((name) => ({ name, at: night[name] ?? '' }))
    .sort((a, b) => a.at.localeCompare(b.at));
  return order({
    prompt: `The night of ${dateText(night.localDate)} at ${String(night.latitudeDeg)}° north. Put these moments in the order in which they come, from afternoon to morning.`,
    explanation: `${chosen.map(({ name, at }) => `${eventNames[name]} ${clockText(at)}`).join(', ')} by local mean time.`,
    steps: chosen.map(({ name }) => eventNames[name]),
    rules: chosen.slice(1).map(({ at }, i) => ({
      first: i,
      then: i + 1,
      reason: `they come at ${clockText(chosen[i]?.at ?? '')} and ${clockText(at)}.`,
    })),
  });
}

const round1 = (value: number): number => Math.round(10 * value) / 10;

function readTheNight({ random }: ItemDraw) {
  const all = random.shuffle(
    [35, 45, 52].flatMap((lat) => dates.map((date) => [lat, date] as const)),
  );
  const fits = (one: Night): boolean =>
    moonlessHours(one) >= 1.5 && darkHours(one) - moonlessHours(one) >= 1.5;
  const night =
    all
      .slice(0, 8)
      .map(([lat, date]) => nightOf(lat, date))
      .find(fits) ?? nightOf(52, '2026-12-18');
  const key = round1(moonlessHours(night));
  const whole = (Date.parse(night.sunrise ?? '') - Date.parse(night.sunset ?? '')) / 3_600_000;
  return numeric({
    prompt: `The chart shows the night of ${dateText(night.localDate)} at ${String(night.latitudeDeg)}° north. For how many hours is it dark with the Moon down?`,
    drawing: drawNightChart(night),
    unit: 'hours',
    key,
    tolerance: { mode: 'absolute', full: 0.5, zero: 2 },
    explanation: `Look where the Sun’s bar is darkest and the Moon’s bar is empty: ${String(key)} hours.`,
    slips: [
      {
        gives: round1(darkHours(night)),
        reason: 'For so long the Sun is far enough down. For part of it the Moon is up.',
        misconception: 'full-moon-is-best' as const,
      },
      {
        gives: round1(whole),
        reason: 'That is from sunset to sunrise. After sunset comes twilight.',
        misconception: 'dark-at-sunset' as const,
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 1),
  });
}

/** From one new Moon to the next, days on the mean (Meeus, Astronomical Algorithms, ch. 49). */
const monthDays = 29.53;

function howMuchLater({ random }: ItemDraw) {
  const age = random.integer(2, 13);
  const key = round1((24 * age) / monthDays);
  const when = pickOne(random, [
    `The Moon was new ${String(age)} days ago`,
    `${String(age)} days have passed since new Moon`,
    `The young Moon is ${String(age)} days old`,
  ]);
  return numeric({
    prompt: `${when}. The new Moon sets with the Sun, and each day the Moon sets about 49 minutes later. On the mean, how long after the Sun does it set now?`,
    unit: 'hours',
    key,
    tolerance: { mode: 'absolute', full: 0.5, zero: 2 },
    explanation: `${String(age)} × 49 minutes are about ${String(key)} hours: so long its light is in the evening sky.`,
    slips: [
      { gives: age, reason: 'Each day costs about 49 minutes, not a whole hour.' },
      {
        gives: round1(24 - key),
        reason: 'You counted toward sunset. A growing Moon sets after the Sun.',
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 1),
  });
}

/** Sunset, twilights and the Moon: when it gets dark, and for how long. */
export const whenItIsDark: ItemFamily = {
  id: 'when-it-is-dark',
  lesson: 'the-night',
  objective: 'dusk',
  skill: 'safety',
  title: 'When it gets dark, and for how long',
  version: 3,
  templates: {
    'name-the-twilight': nameTheTwilight,
    'order-the-night': orderTheNight,
    'read-the-night': readTheNight,
    'how-much-later': howMuchLater,
    'predict-the-twilight': predictTheTwilight,
  },
};
