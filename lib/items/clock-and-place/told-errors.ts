import type { Random } from '../../variants/random';
import type { MisconceptionId } from '../misconceptions';
import { siderealDegPerHour } from './drawn-sky';
import { pickOne } from '../../variants/pick-one';

/** Something wrong that a mount was told, and by how much that turns its sky about the pole. */
export type ToldError = {
  /** A sentence. */
  told: string;
  /** The same as the name of an error. */
  short: string;
  turnDeg: number;
  why: string;
  slips: readonly { gives: number; reason: string; misconception?: MisconceptionId }[];
};

const whole = (value: number): string => String(Math.round(value));

function clockError(random: Random): ToldError {
  const minutes = pickOne(random, [8, 12, 16, 20, 24, 28, 32, 40, 48, 52, 80, 100]);
  const way = pickOne(random, ['ahead', 'behind']);
  const turnDeg = (siderealDegPerHour * minutes) / 60;
  return {
    told: `The mount’s clock is ${String(minutes)} minutes ${way}.`,
    short: `the clock ${String(minutes)} minutes ${way}`,
    turnDeg,
    why: `The sky turns 15° an hour, 1° in four minutes: ${String(minutes)} ÷ 4 is about ${whole(turnDeg)}°.`,
    slips: [
      {
        gives: Number((minutes / 60).toFixed(2)),
        misconception: 'hour-is-one-degree',
        reason: 'That is 1° an hour. The sky turns 15° an hour.',
      },
      { gives: minutes, reason: 'That is 1° a minute. It takes four minutes to turn by 1°.' },
    ],
  };
}

function hoursError(random: Random): ToldError {
  const kinds = [
    {
      told: 'Summer time is on, and the switch for it was forgotten.',
      short: 'the switch for summer time forgotten',
      hours: 1,
    },
    {
      told: 'The zone was entered two hours too far ahead of UTC.',
      short: 'the zone two hours too far ahead',
      hours: 2,
    },
    {
      told: 'The zone was entered two hours too far behind UTC.',
      short: 'the zone two hours too far behind',
      hours: 2,
    },
    {
      told: 'The zone is 3 hours ahead of UTC; “3 hours behind” was entered.',
      short: 'a zone of +3 h entered as −3 h',
      hours: 6,
    },
    {
      told: 'The zone is 2 hours behind UTC; “2 hours ahead” was entered.',
      short: 'a zone of −2 h entered as +2 h',
      hours: 4,
    },
  ] as const;
  const { told, short, hours } = pickOne(random, kinds);
  const turnDeg = siderealDegPerHour * hours;
  return {
    told,
    short,
    turnDeg,
    why: `The mount is ${hours === 1 ? 'an hour' : `${String(hours)} hours`} wrong, and the sky turns 15° an hour: ${whole(turnDeg)}°.`,
    slips: [
      {
        gives: hours,
        misconception: 'hour-is-one-degree',
        reason: 'That is 1° an hour. The sky turns 15° an hour.',
      },
      ...(hours === 1
        ? [
            {
              gives: 0,
              reason: 'The hour of summer time counts: the mount is an hour wrong.',
              misconception: 'summer-time-hour' as const,
            },
          ]
        : []),
      ...(hours === 1
        ? []
        : [
            {
              gives: turnDeg / 2,
              reason: `The mount is wrong by ${String(hours)} hours, not by ${String(hours / 2)}.`,
            },
          ]),
    ],
  };
}

function dateError(random: Random): ToldError {
  const days = random.integer(2, 9);
  const way = pickOne(random, ['late', 'early']);
  const turnDeg = 0.9856 * days;
  return {
    told: `The date was entered ${String(days)} days too ${way}; the time of day is right.`,
    short: `the date ${String(days)} days too ${way}`,
    turnDeg,
    why: `From one day to the same hour of the next the sky turns on by about 1°: ${String(days)} days are about ${whole(turnDeg)}°.`,
    slips: [
      {
        gives: 15 * days,
        reason: '15° is what an hour does. At the same hour, a day is worth 1°.',
      },
      {
        gives: 0,
        misconception: 'same-hours-all-year',
        reason:
          'A star does not keep the same hours: it is four minutes earlier each night, and that is 1°.',
      },
    ],
  };
}

function longitudeError(random: Random): ToldError {
  if (random.integer(0, 1) === 0) {
    const off = random.integer(3, 14);
    const side = pickOne(random, ['east', 'west']);
    return {
      told: `The longitude was entered ${String(off)}° too far ${side}.`,
      short: `the longitude ${String(off)}° too far ${side}`,
      turnDeg: off,
      why: `A degree of longitude turns the sky by a degree: ${String(off)}°.`,
      slips: [
        {
          gives: 15 * off,
          reason: '15° is for an hour of the clock. A degree of longitude is a degree.',
        },
        {
          gives: 0,
          reason: 'Longitude counts: over another place the same stars stand elsewhere.',
        },
      ],
    };
  }
  const longitude = random.integer(2, 18);
  const [right, entered] = pickOne(random, [
    ['west', 'east'],
    ['east', 'west'],
  ] as const);
  return {
    told: `The place is at longitude ${String(longitude)}° ${right}; ${String(longitude)}° ${entered} was entered.`,
    short: `longitude ${String(longitude)}° ${right} entered as ${entered}`,
    turnDeg: 2 * longitude,
    why: `From ${String(longitude)}° ${right} to ${String(longitude)}° ${entered} it is twice ${String(longitude)}°, and a degree of longitude turns the sky by a degree: ${String(2 * longitude)}°.`,
    slips: [
      {
        gives: longitude,
        reason: 'That is the way to Greenwich only. On the other side it is as far again.',
      },
      { gives: 0, reason: 'East and west do matter: the mount takes you for somewhere else.' },
    ],
  };
}

/** An error of the clock, of whole hours, of the date or of the longitude. */
export const drawError = (random: Random): ToldError =>
  pickOne(random, [clockError, hoursError, dateError, longitudeError])(random);
