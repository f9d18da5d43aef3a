import { wrap360 } from '../../units/angle';
import type { Random } from '../../variants/random';
import { choice, match, numeric, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import type { Position } from './drawn-sky';
import { altitudeLooks, apart, mistakenPlaces } from './mistaken-places';
import { panorama } from './panorama';
import { discDrawing, onDisc, starShape } from './sky-drawings';
import { whereabouts } from './words';
import { compassPoint } from '../../wording/compass-points';
import { inFists } from '../../wording/fists';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** How many times too wide eyes make a gap along the horizon (design: learning design). */
const gapLooks = 1.26;

const things = [
  'a star',
  'a bright star',
  'a planet',
  'the Moon',
  'an alignment star',
  'a red star',
];

/** A place off the four directions, so that no slip leads back to it. */
function drawPlace(random: Random): Position {
  const quarter = 90 * random.integer(0, 3);
  return {
    azimuthDeg: quarter + 5 * random.integer(4, 14),
    altitudeDeg: 5 * random.integer(4, 10),
  };
}

const spoken = ({ azimuthDeg, altitudeDeg }: Position): string =>
  `azimuth ${String(Math.round(azimuthDeg))}°, altitude ${String(Math.round(altitudeDeg))}°`;

function pointAtIt({ random }: ItemDraw) {
  const key = drawPlace(random);
  const wrong = mistakenPlaces(key).filter((one, i, all) =>
    [key, ...all.slice(0, i)].every(
      (other) => apart(one, other) > 12 && whereabouts(one) !== whereabouts(other),
    ),
  );
  const spot = (at: Position) => ({ ...onDisc(at), where: capitalised(whereabouts(at)) });
  return point({
    prompt: `The mount says of ${pickOne(random, things)}: ${spoken(key)}. Point at the place. The chart shows the whole sky as you see it lying on your back, so east is on the left.`,
    drawing: discDrawing(
      [key, ...wrong].map((at) => starShape(at)),
      {
        alternative:
          'A round chart of the sky: zenith in the middle, horizon as its rim, north at the top, east on the left. Several points are marked.',
      },
    ),
    explanation: `Azimuth ${String(key.azimuthDeg)}° is in the ${compassPoint(key.azimuthDeg)}. ${String(key.altitudeDeg)}° is ${inFists(key.altitudeDeg)} up from the horizon.`,
    right: {
      ...spot(key),
      reason: `In the ${compassPoint(key.azimuthDeg)}, ${inFists(key.altitudeDeg)} up.`,
    },
    wrong: wrong.map((one) => ({
      ...spot(one),
      reason: one.reason,
      misconception: one.misconception,
    })),
  });
}

function readThePanorama({ random }: ItemDraw) {
  const facingDeg = 45 * random.integer(0, 7);
  const fists = random.integer(1, 4) * pickOne(random, [1, -1]);
  const altitudeDeg = 5 * random.integer(4, 9);
  const azimuthDeg = wrap360(facingDeg + 10 * fists);
  const drawing = panorama(facingDeg, { azimuthDeg, altitudeDeg });
  const facing = compassPoint(facingDeg);
  if (random.integer(0, 1) === 0) {
    return numeric({
      prompt: `You face ${facing} and hold out your fists: the marks are a fist of 10° apart. What is the altitude of the star?`,
      drawing,
      unit: 'degrees',
      key: altitudeDeg,
      tolerance: { mode: 'absolute', full: 2.5, zero: 10 },
      explanation: `It stands ${inFists(altitudeDeg)} above the horizon, and a fist is 10°: ${String(altitudeDeg)}°.`,
      slips: [
        { gives: altitudeDeg / 10, reason: 'That is the number of fists. Each stands for 10°.' },
        {
          gives: altitudeDeg * altitudeLooks,
          reason: 'That is how high it would look. Count the marks: they do not stretch.',
          misconception: 'altitude-looks-higher',
        },
        ...(Math.abs(azimuthDeg - altitudeDeg) > 6
          ? [
              {
                gives: azimuthDeg,
                misconception: 'altitude-azimuth-swapped' as const,
                reason: 'That is its azimuth, which way. Altitude is how high.',
              },
            ]
          : []),
      ],
    });
  }
  return numeric({
    prompt: `You face ${facing} and hold out your fists: the marks are a fist of 10° apart. What is the azimuth of the star?`,
    drawing,
    unit: 'degrees',
    key: azimuthDeg,
    wrapsAt360: true,
    tolerance: { mode: 'absolute', full: 2.5, zero: 12 },
    explanation: `Due ${facing} is ${String(facingDeg)}°. To the right azimuth grows, to the left it shrinks, by 10° a fist: ${String(azimuthDeg)}°.`,
    slips: [
      {
        gives: wrap360(facingDeg - 10 * fists),
        misconception: 'azimuth-anticlockwise' as const,
        reason: 'You counted the wrong way. To the right, azimuth grows.',
      },
      {
        gives: wrap360(azimuthDeg + 180),
        misconception: 'azimuth-from-south' as const,
        reason: 'You counted from south. Azimuth starts at north.',
      },
    ],
  });
}

function nameTheDirections({ random }: ItemDraw) {
  const chosen = pickSome(random, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15], 6).map(
    (step) => 22.5 * step,
  );
  const [spareOne = 0, spareTwo = 0, ...asked] = chosen;
  const text = (azimuthDeg: number) => `${String(azimuthDeg)}°`;
  const from = pickOne(random, ['Four lamps', 'Four stars', 'Four masts', 'Four hilltops']);
  return match({
    prompt: `${from} stand in the ${asked.map(compassPoint).join(', the ')}. Which azimuth belongs to which?`,
    explanation: 'North is 0°, east 90°, south 180°, west 270°; the others lie between.',
    pairs: asked.map((azimuthDeg) => ({
      left: capitalised(compassPoint(azimuthDeg)),
      right: text(azimuthDeg),
      reason: `from north through east to ${compassPoint(azimuthDeg)} it is ${text(azimuthDeg)}.`,
    })),
    spare: [text(spareOne), text(spareTwo)],
  });
}

const sides = [
  { facing: 'north', azimuthDeg: 0 },
  { facing: 'east', azimuthDeg: 90 },
  { facing: 'south', azimuthDeg: 180 },
  { facing: 'west', azimuthDeg: 270 },
] as const;

function claimsThatHold({ random }: ItemDraw) {
  const at = drawPlace(random);
  const { azimuthDeg, altitudeDeg } = at;
  const near = sides.reduce((a, b) =>
    apart({ ...b, altitudeDeg: 0 }, { azimuthDeg, altitudeDeg: 0 }) <
    apart({ ...a, altitudeDeg: 0 }, { azimuthDeg, altitudeDeg: 0 })
      ? b
      : a,
  );
  const offDeg = Math.round(((azimuthDeg - near.azimuthDeg + 540) % 360) - 180);
  const hand = offDeg > 0 ? 'right' : 'left';
  const other = offDeg > 0 ? 'left' : 'right';
  const gap = inFists(Math.abs(offDeg));
  return several({
    prompt: `${capitalised(pickOne(random, things))} has ${spoken(at)}. Which of these are true?`,
    explanation: `${capitalised(whereabouts(at))}. Facing due ${near.facing}, azimuth ${String(near.azimuthDeg)}°, it is ${String(Math.abs(offDeg))}° to the ${hand}.`,
    right: [
      {
        text: `It stands in the ${compassPoint(azimuthDeg)}.`,
        reason: `${String(azimuthDeg)}° is in the ${compassPoint(azimuthDeg)}.`,
      },
      {
        text: `Facing ${near.facing}, you find it ${gap} to the ${hand}.`,
        reason: `It is ${String(Math.abs(offDeg))}° to the ${hand} of ${near.facing}.`,
      },
    ],
    wrong: [
      {
        text: `It stands in the ${compassPoint(azimuthDeg + 180)}.`,
        reason: 'that counts the azimuth from south.',
        misconception: 'azimuth-from-south',
      },
      {
        text: `Facing ${near.facing}, you find it ${gap} to the ${other}.`,
        reason: `azimuth grows to the right, so it is to the ${hand}.`,
        misconception: 'azimuth-anticlockwise',
      },
      {
        text: `Counted with the fist, it is ${inFists(altitudeDeg * altitudeLooks)} up.`,
        reason: `that is how high it looks. ${String(altitudeDeg)}° is ${inFists(altitudeDeg)}.`,
        misconception: 'altitude-looks-higher',
      },
    ],
  });
}

const marks = ['a church', 'a mast', 'a chimney', 'a lone tree', 'a water tower', 'a hilltop'];

function gapOnTheHorizon({ random }: ItemDraw) {
  const gapDeg = 10 * random.integer(3, 9);
  const firstDeg = 5 * random.integer(0, 71);
  const secondDeg = wrap360(firstDeg + gapDeg);
  const [one = '', two = ''] = pickSome(random, marks, 2);
  const text = (angleDeg: number) => inFists(angleDeg);
  return choice({
    prompt: `From the yard, ${one} stands at azimuth ${String(firstDeg)}° and ${two} at ${String(secondDeg)}°. How far is it from one to the other along the horizon, counted with your fist?`,
    explanation: `From ${String(firstDeg)}° on to ${String(secondDeg)}° it is ${String(gapDeg)}°, and a fist is 10°.`,
    right: { text: text(gapDeg), reason: `${String(gapDeg)}° ÷ 10° is ${text(gapDeg)}.` },
    wrong: [
      {
        text: text(gapDeg * gapLooks),
        reason:
          'That is how wide the gap looks: about a quarter too wide. The fist does not stretch.',
        misconception: 'azimuth-gap-looks-wider',
      },
      { text: text(gapDeg / 2), reason: 'A fist is 10° wide, not 20°.' },
      { text: text(gapDeg * 2), reason: 'A fist is 10° wide, not 5°. Half a fist is 5°.' },
    ],
  });
}

export const whereItStands: ItemFamily = {
  id: 'where-it-stands',
  lesson: 'clock-and-place',
  objective: 'where',
  skill: 'clock-and-place',
  title: 'Altitude and azimuth',
  version: 1,
  templates: {
    'point-at-it': pointAtIt,
    'read-the-panorama': readThePanorama,
    'name-the-directions': nameTheDirections,
    'claims-that-hold': claimsThatHold,
    'gap-on-the-horizon': gapOnTheHorizon,
  },
};
