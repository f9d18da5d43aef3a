import { believedInstant } from '../../clock/believed-instant';
import { choice, match, numeric, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import type { MisconceptionId } from '../misconceptions';
import type { Random } from '../../variants/random';
import { cardWords, drawCard, formDrawing, slipIn } from './form-drawing';
import { clockTime } from './words';
import { pickOne, pickSome } from '../../variants/pick-one';

/** A clock as it hangs on a wall somewhere. Minutes after midnight; the zone without summer time. */
type WallClock = { minutes: number; zoneMinutes: number; summerTime: boolean };

const zoneHours = [-8, -7, -6, -5, -4, -3, 0, 1, 2, 3, 8, 9, 10, 12] as const;
const towns = ['a school', 'a club', 'a class', 'a library', 'an observatory', 'a camp'] as const;

/** A plain day, far from any change of date that matters. */
const day = '2026-07-10';

/** UTC, minutes after midnight of the day that the clock shows; outside 0…1440 on another day. */
function utcMinutesOf({ minutes, zoneMinutes, summerTime }: WallClock): number {
  const believed = believedInstant({
    localTime: `${day}T${clockTime(minutes)}`,
    zoneOffsetMinutes: zoneMinutes,
    summerTime,
    summerTimeMinutes: 60,
  });
  if (!believed.ok) throw new Error('a clock shows a time of day');
  return (Date.parse(believed.instant) - Date.parse(`${day}T00:00:00Z`)) / 60_000;
}

const wallClockAt = (utcMinutes: number, zoneMinutes: number, summerTime: boolean): WallClock => ({
  zoneMinutes,
  summerTime,
  minutes: utcMinutes + zoneMinutes + (summerTime ? 60 : 0),
});

const zoneInWords = (zoneMinutes: number): string =>
  zoneMinutes === 0
    ? 'zone UTC itself'
    : `zone ${String(Math.abs(zoneMinutes / 60))} h ${zoneMinutes > 0 ? 'ahead of' : 'behind'} UTC`;
const inWords = (clock: WallClock): string =>
  `${clockTime(clock.minutes)}, ${zoneInWords(clock.zoneMinutes)}, summer time ${clock.summerTime ? 'on' : 'off'}`;
const sumInWords = ({ minutes, zoneMinutes, summerTime }: WallClock): string =>
  `${clockTime(minutes)}${summerTime ? ' less 1 h of summer time' : ''}${
    zoneMinutes === 0
      ? ''
      : `${zoneMinutes > 0 ? ' less' : ' and'} ${String(Math.abs(zoneMinutes / 60))} h for the zone`
  }`;

function drawClock(random: Random): WallClock {
  return {
    minutes: 15 * random.integer(76, 92),
    zoneMinutes: 60 * pickOne(random, zoneHours),
    summerTime: random.integer(0, 1) === 1,
  };
}

function clockToUtc({ random }: ItemDraw) {
  const clock = { ...drawClock(random), summerTime: true };
  const zone = clock.zoneMinutes === 0 ? 60 : clock.zoneMinutes;
  const shown = { ...clock, minutes: 60 * random.integer(19, 23), zoneMinutes: zone };
  const inDay = (minutes: number): number => (((minutes / 60) % 24) + 24) % 24;
  const key = inDay(utcMinutesOf(shown));
  const slips: { gives: number; reason: string; misconception: MisconceptionId }[] = [
    {
      gives: inDay(utcMinutesOf({ ...shown, summerTime: false })),
      reason: 'The hour of summer time is still in it. Take it off.',
      misconception: 'summer-time-hour',
    },
    {
      gives: inDay(utcMinutesOf({ ...shown, zoneMinutes: -zone })),
      reason: `You went the wrong way with the zone. It is ${zone > 0 ? 'ahead of UTC, so UTC is earlier' : 'behind UTC, so UTC is later'}.`,
      misconception: 'zone-the-wrong-way',
    },
  ];
  return numeric({
    prompt: `The clock of ${pickOne(random, towns)} shows ${inWords(shown)}. Which full hour is it by UTC, from 0 to 23?`,
    unit: 'hours',
    key,
    slips: slips.filter(({ gives }) => Math.abs(gives - key) > 0.1),
    tolerance: { mode: 'absolute', full: 0.02, zero: 0.5 },
    explanation: `${sumInWords(shown)} is ${clockTime(60 * key)} by UTC${utcMinutesOf(shown) >= 1440 ? ', on the next date' : ''}.`,
  });
}

function oneMoment({ random }: ItemDraw) {
  const utc = 15 * random.integer(72, 88);
  const zones = pickSome(
    random,
    zoneHours.filter((hours) => hours !== 0 && hours !== 12),
    5,
  ).map((hours) => 60 * hours);
  const [a = 60, b = 120, c = 180, d = 480, e = -300] = zones;
  const summers = [0, 1, 2].map(() => random.integer(0, 1) === 1);
  const told = (clock: WallClock) => ({
    text: inWords(clock),
    reason: `${sumInWords(clock)} is ${clockTime(utc)} by UTC.`,
  });
  const forgot = { ...wallClockAt(utc, c, false), summerTime: true };
  const added = wallClockAt(utc, -d, summers[1] ?? false);
  const backwards = { ...added, zoneMinutes: d };
  const unshifted = { minutes: utc, zoneMinutes: e, summerTime: summers[2] ?? false };
  const shows = (clock: WallClock) =>
    `${sumInWords(clock)} is ${clockTime(utcMinutesOf(clock))} by UTC.`;
  return several({
    prompt: `It is ${clockTime(utc)} by UTC. Which of these clocks are right?`,
    explanation:
      'Take the hour of summer time off, where it is on. Then take the zone off: less for a zone ahead, more for one behind.',
    right: [told(wallClockAt(utc, a, summers[0] ?? false)), told(wallClockAt(utc, b, !summers[0]))],
    wrong: [
      { text: inWords(forgot), reason: shows(forgot), misconception: 'summer-time-hour' },
      { text: inWords(backwards), reason: shows(backwards), misconception: 'zone-the-wrong-way' },
      {
        text: inWords(unshifted),
        reason: `a clock shows UTC only where zone and summer time come to nothing. ${shows(unshifted)}`,
      },
    ],
  });
}

function clocksOfTheWorld({ random }: ItemDraw) {
  const utc = 15 * random.integer(64, 92);
  const zones = pickSome(random, zoneHours, 6).map((hours) => 60 * hours);
  const clocks = zones.map((zone) => wallClockAt(utc, zone, random.integer(0, 1) === 1));
  const distinct = clocks.filter(
    (clock, i) =>
      clocks.findIndex((one) => clockTime(one.minutes) === clockTime(clock.minutes)) === i,
  );
  const [asked, spare] = [distinct.slice(0, 4), distinct.slice(4)];
  return match({
    prompt: `It is ${clockTime(utc)} by UTC. What do the clocks show?`,
    explanation:
      'Put on what a zone is ahead of UTC, or take off what it is behind; and put on the hour of summer time where it is on.',
    pairs: asked.map((clock) => ({
      left: `${zoneInWords(clock.zoneMinutes).replace('zone', 'Zone')}, summer time ${clock.summerTime ? 'on' : 'off'}`,
      right: clockTime(clock.minutes),
      reason: `together ${String((clock.minutes - utc) / 60).replace('-', '−')} h from UTC.`,
    })),
    spare: spare.map(({ minutes }) => clockTime(minutes)),
  });
}

function momentsInOrder({ random }: ItemDraw) {
  const zones = pickSome(random, [-3, 0, 1, 2, 3], 4).map((hours) => 60 * hours);
  // So early that no clock of the four has come to the next day.
  const first = 15 * random.integer(62, 68);
  const gaps = [0, 1, 2, 3].map((i) => first + 45 * i + 15 * random.integer(0, 1));
  const clocks = zones.map((zone, i) =>
    wallClockAt(gaps[i] ?? first, zone, random.integer(0, 1) === 1),
  );
  const utc = clocks.map((clock) => clockTime(utcMinutesOf(clock)));
  return order({
    prompt: `On ${String(random.integer(1, 30))} ${pickOne(random, ['June', 'April', 'September', 'November'])} four observers each note the time by a clock of their own. Put the moments in order, the earliest first.`,
    explanation: `By UTC they are ${utc.join(', ')}.`,
    steps: clocks.map(inWords),
    rules: clocks.slice(1).map((_, i) => ({
      first: i,
      then: i + 1,
      reason: `by UTC it is ${utc[i] ?? ''}, the other ${utc[i + 1] ?? ''}.`,
    })),
  });
}

function rowThatIsWrong({ random }: ItemDraw) {
  const card = drawCard(random);
  const slip = slipIn(random, card);
  const { drawing, rows } = formDrawing(slip.form);
  const rowOf = (id: string) => rows.filter((row) => row.id === id);
  const [right] = rowOf(slip.row);
  if (right === undefined) throw new Error('every slip is in a row');
  return point({
    prompt: `The card says: ${cardWords(card)}. One row of the mount’s form is wrong. Point at it.`,
    drawing,
    explanation: slip.reason,
    right: { ...right.spot, reason: slip.reason },
    wrong: rows
      .filter((row) => row.id !== slip.row)
      .map(({ spot, fits }) => ({ ...spot, reason: `${fits} That is what the card says.` })),
  });
}

function whatIsForgotten({ random }: ItemDraw) {
  const clock = { ...drawClock(random), summerTime: true };
  const utc = (one: WallClock) => `${clockTime(utcMinutesOf(one))} by UTC`;
  const turned = { ...clock, zoneMinutes: -clock.zoneMinutes };
  const wrong = [
    {
      text: utc(clock),
      reason: 'That is the true moment. Without the switch the mount does not come to it.',
    },
    {
      text: utc({ ...clock, minutes: clock.minutes - 60 }),
      reason: 'That takes the hour off twice. Forgotten, it is not taken off at all.',
    },
    {
      text: utc({ ...turned, summerTime: false }),
      reason: `You went the wrong way with the zone, which is ${clock.zoneMinutes > 0 ? 'ahead of' : 'behind'} UTC.`,
      misconception: 'zone-the-wrong-way' as const,
    },
    {
      text: `${clockTime(clock.minutes + 60)} by UTC`,
      reason: 'The mount does know the zone. Only the switch for summer time was left off.',
    },
  ];
  const right = utc({ ...clock, summerTime: false });
  return choice({
    prompt: `The clock shows ${inWords(clock)}. Someone enters clock and zone, but leaves the switch for summer time off. Which moment does the mount take it for?`,
    explanation: `The mount takes off the zone only: it comes to ${right}, an hour later than the true ${utc(clock)}. Its sky is turned by 15°.`,
    right: { text: right, reason: 'The zone is taken off, the hour of summer time is not.' },
    wrong: wrong.filter(
      ({ text }, i) => text !== right && wrong.findIndex((one) => one.text === text) === i,
    ),
  });
}

export const moment: ItemFamily = {
  id: 'one-moment-many-clocks',
  lesson: 'clock-and-place',
  objective: 'moment',
  skill: 'clock-and-place',
  title: 'Clock, zone, summer time and UTC',
  version: 1,
  templates: {
    'clock-to-utc': clockToUtc,
    'one-moment': oneMoment,
    'clocks-of-the-world': clocksOfTheWorld,
    'moments-in-order': momentsInOrder,
    'row-that-is-wrong': rowThatIsWrong,
    'what-is-forgotten': whatIsForgotten,
  },
};
