import type { FaultId } from '../../faults/fault-ids';
import { settingsCard } from '../../faults/settings-card';
import { siderealDegPerSecond } from '../../sky/turned-frame';
import { degreesToRadians, radiansToDegrees } from '../../units/angle';
import {
  chartPoint,
  chartWhere,
  chartWords,
  skyChart,
  type ChartPlace,
} from '../align-on-two-stars/sky-chart';
import { deg, figures } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { choice, match, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { cardDrawing, cardLines } from './card-drawing';
import { firstSlew } from './first-slew';
import { someEvening, waysOf } from './some-evening';

const hourDeg = 3600 * siderealDegPerSecond;
/** A sidereal day is shorter than a day of the clock by so much of a turn. */
const dayDeg = 86_400 * siderealDegPerSecond - 360;

/** How far apart a star is from itself after a turn about the pole: on its small circle. */
export const turnOnSkyDeg = (turnDeg: number, declinationDeg: number): number =>
  2 *
  radiansToDegrees(
    Math.asin(Math.cos(degreesToRadians(declinationDeg)) * Math.sin(degreesToRadians(turnDeg) / 2)),
  );

const circles = [
  { declinationDeg: 0, where: 'on the sky’s equator, where it turns fastest', share: 'all of' },
  {
    declinationDeg: 60,
    where: '60° from the sky’s equator, where it turns half as fast',
    share: 'about half of',
  },
] as const;

function howFarOff({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const slip = pickOne(random, [
    { text: 'the clock is one hour wrong', turnDeg: hourDeg },
    { text: 'the zone is two hours wrong', turnDeg: 2 * hourDeg },
    { text: 'the clock is half an hour wrong', turnDeg: hourDeg / 2 },
    { text: 'the clock is 20 minutes wrong', turnDeg: hourDeg / 3 },
  ]);
  const { declinationDeg, where, share } = pickOne(random, circles);
  const key = turnOnSkyDeg(slip.turnDeg, declinationDeg);
  return numeric({
    prompt: `${kit.name} slews to a star ${where}. But ${slip.text}. About how far from the star does it stop?`,
    unit: 'degrees',
    key: Number(key.toFixed(2)),
    tolerance: { mode: 'relative', full: 0.1, zero: 0.45 },
    explanation: `The sky turns 15° an hour, so this is a turn of ${figures(slip.turnDeg)}°, and this star goes along by ${share} it: ${figures(key)}°.`,
    slips: [
      ...(declinationDeg === 0
        ? []
        : [
            {
              gives: Number(slip.turnDeg.toFixed(2)),
              reason: 'So far the sky turns at its equator. This star goes round a smaller circle.',
            },
          ]),
      {
        gives: Number((slip.turnDeg / 15).toFixed(2)),
        reason: 'That is in hours. Each hour is 15°.',
      },
    ],
  });
}

type Slip = { id: string; text: string; turnDeg: number };
const slipsAt = (longitudeDeg: number): readonly Slip[] => [
  { id: 'hour', text: 'Summer time, an hour', turnDeg: hourDeg },
  { id: 'day', text: 'The date, by one day', turnDeg: dayDeg },
  { id: 'month', text: 'The date, by a month', turnDeg: 30 * dayDeg },
  { id: 'side', text: 'The longitude, east for west', turnDeg: 2 * longitudeDeg },
  { id: 'zone', text: 'The zone, by three hours', turnDeg: 3 * hourDeg },
];
/** Twice any of them is none of the other turns. */
const longitudes = [4, 5, 10, 11, 12, 28, 35, 60, 75];

function whichEntry({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const longitudeDeg = pickOne(random, longitudes);
  const [key, ...others] = random.shuffle(slipsAt(longitudeDeg)).slice(0, 4);
  if (key === undefined) throw new Error('there are five slips');
  const east = pickOne(random, ['east', 'west']);
  return choice({
    prompt: `At longitude ${String(longitudeDeg)}° ${east}, ${kit.name}’s first slews all end as if the sky had been turned by about ${figures(key.turnDeg, 0)}° about its pole. Which entry is the first suspect?`,
    right: {
      text: key.text,
      reason: `That turns the sky by ${figures(key.turnDeg, 0)}°.`,
    },
    wrong: others.map(({ id, text, turnDeg }) => ({
      text,
      reason: `That would turn the sky by ${figures(turnDeg, 0)}°.`,
      ...(id === 'hour' ? { misconception: 'summer-time-hour' as const } : {}),
    })),
    explanation:
      'An hour is 15°, a day about 1°, a month about 30°. The wrong side of Greenwich is twice the longitude.',
  });
}

const cardFaults: readonly FaultId[] = [
  'summer-time',
  'time-zone',
  'date',
  'longitude-sign',
  'latitude',
];

function readTheCard(draw: ItemDraw) {
  const { random } = draw;
  for (;;) {
    const some = someEvening(draw);
    const way = random.pick(waysOf(pickOne(random, cardFaults), some))?.way;
    if (way === undefined) continue;
    const truth = cardLines(settingsCard(some.evening.entered));
    const card = settingsCard(way.entered);
    const entered = cardLines(card);
    const differs = truth.filter(([, value], i) => entered[i]?.[1] !== value);
    const [wrongLine] = differs;
    if (differs.length !== 1 || wrongLine === undefined) continue;
    const answer = ([name, value]: readonly [string, string]): string =>
      `${name}: make it ${value}`;
    const others = random.shuffle(truth.filter((line) => line !== wrongLine)).slice(0, 3);
    return choice({
      prompt: `This was entered into ${some.kit.name}. What is so: ${truth.map(([name, value]) => `${name.toLowerCase()} ${value}`).join(', ')}. What is to be corrected?`,
      drawing: cardDrawing(card),
      right: {
        text: answer(wrongLine),
        reason: `The card says ${entered.find(([name]) => name === wrongLine[0])?.[1] ?? ''}. All other lines are right.`,
      },
      wrong: others.map((line) => ({
        text: answer(line),
        reason: 'The card has that already. Go on to the next line.',
      })),
      explanation: 'Hold the card against what is certain, line by line, and read each aloud.',
    });
  }
}

function turnMatch({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const longitudeDeg = pickOne(random, longitudes);
  const some = random.shuffle(slipsAt(longitudeDeg)).slice(0, 4);
  return match({
    prompt: `At longitude ${String(longitudeDeg)}° somebody enters something wrong into ${kit.name}. By how much does each slip turn the sky that the mount believes in?`,
    pairs: some.map(({ id, text, turnDeg }) => ({
      left: text,
      right: `By about ${figures(turnDeg, 0)}°`,
      reason:
        {
          hour: '360° in 24 hours is 15° an hour.',
          day: '360° in 365 days is about 1° a day.',
          month: 'Thirty days at about 1° a day.',
          side: `From ${String(longitudeDeg)}° on one side to ${String(longitudeDeg)}° on the other is twice that.`,
          zone: 'Three times 15°.',
        }[id] ?? '',
    })),
    explanation: 'Learn the three sizes: an hour 15°, a day 1°, a month 30°.',
  });
}

function whereItEnds({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const latitudeDeg = pickOne(random, [52, 45, 38, 33]);
  // An hour would put star and circles over each other on the chart.
  const fastHours = pickOne(random, [2, -2]);
  const star: ChartPlace = {
    azimuthDeg: random.integer(15, 21) * 10,
    altitudeDeg: random.integer(6, 10) * 5,
  };
  const late = firstSlew({ kind: 'clock', fastHours, latitudeDeg }, star);
  const early = firstSlew({ kind: 'clock', fastHours: -fastHours, latitudeDeg }, star);
  const higher = { azimuthDeg: star.azimuthDeg, altitudeDeg: star.altitudeDeg + 25 };
  const lower = { azimuthDeg: star.azimuthDeg, altitudeDeg: star.altitudeDeg - 25 };
  const places = [late.lands, early.lands, higher, lower];
  const marks = [star, ...places.map((place) => ({ ...place, kind: 'target' as const }))];
  const where = fastHours > 0 ? 'west' : 'east';
  const [right, ...wrong] = places.map((place, i) => ({
    ...chartPoint(place),
    where: chartWhere(place),
    reason:
      i === 0
        ? `A star in the south goes west. Two hours ${fastHours > 0 ? 'ahead' : 'behind'} it stands farther ${where}.`
        : i === 1
          ? `That is where it is when the clock is two hours ${fastHours > 0 ? 'slow' : 'fast'}.`
          : 'Stars do not climb straight up or down in the south: they pass from east to west.',
  }));
  if (right === undefined) throw new Error('there are four places');
  return point({
    prompt: `${String(latitudeDeg)}° north. The clock of ${kit.name} is two hours ${fastHours > 0 ? 'fast' : 'slow'}. It slews to the star on the chart, in the south. Point at the open circle where the slew ends.`,
    drawing: skyChart({ marks, alternative: chartWords(marks) }),
    right,
    wrong,
    explanation: `The mount looks for the star where it ${fastHours > 0 ? 'will be in' : 'was'} two hours${fastHours > 0 ? '' : ' ago'}, about ${deg(Math.hypot(late.rightDeg, late.upDeg))} to the ${where}.`,
  });
}

/** An hour, a day, a wrong place: by the size of the turn and by the card. */
export const turnedSky: ItemFamily = {
  id: 'turned-sky',
  lesson: 'what-went-wrong',
  objective: 'sky-turned',
  skill: 'diagnose',
  title: 'How far the sky is turned',
  version: 2,
  templates: {
    'how-far-off': howFarOff,
    'which-entry': whichEntry,
    'read-the-card': readTheCard,
    'turn-match': turnMatch,
    'where-it-ends': whereItEnds,
  },
};
