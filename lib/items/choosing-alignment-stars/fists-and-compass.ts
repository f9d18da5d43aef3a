import { wrap180, wrap360 } from '../../units/angle';
import { whereabouts } from '../clock-and-place/words';
import { inFists } from '../../wording/fists';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import { discDrawing, onDisc, starShape } from '../clock-and-place/sky-drawings';
import { choice, match, numeric, point } from '../build-item';
import type { ItemBody } from '../item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { apartDeg, drawEvening, whole, type DrawnEvening, type Light } from './drawn-evening';

/** How many times too large eyes make an altitude (design: learning design). */
const altitudeLooks = 1.5;
const fistDeg = 10;

const toFists = (angleDeg: number): number => 5 * Math.round(angleDeg / 5);

/** Lights that stand where a fist can tell something. */
function wellUp(evening: DrawnEvening): Light[] {
  return evening.lights.filter(
    ({ altitudeDeg, magnitude }) => magnitude < 2.15 && altitudeDeg > 12 && altitudeDeg < 72,
  );
}

function eveningWith({ random, world }: ItemDraw, count: number): DrawnEvening {
  for (;;) {
    const evening = drawEvening({ random, world });
    if (wellUp(evening).length >= count) return evening;
  }
}

function fistsUp(draw: ItemDraw) {
  const evening = eveningWith(draw, 1);
  const light = pickOne(draw.random, wellUp(evening));
  const altitudeDeg = toFists(light.altitudeDeg);
  const fists = inFists(altitudeDeg);
  return numeric({
    prompt: `${evening.when}. With your arm straight you count ${fists} from the level horizon up to ${light.name}. What is its altitude?`,
    unit: 'degrees',
    key: altitudeDeg,
    tolerance: { mode: 'absolute', full: 3, zero: 10 },
    explanation: `A fist at arm’s length spans about 10°, so ${fists} are ${whole(altitudeDeg)}°.`,
    slips: [
      {
        gives: altitudeDeg / fistDeg,
        reason: 'That is the number of fists. Each stands for about 10°.',
      },
      {
        gives: altitudeDeg * altitudeLooks,
        reason:
          'That is how high it looks. Eyes make altitudes about one and a half times too large; the fist does not.',
        misconception: 'altitude-looks-higher',
      },
    ],
  });
}

const directions = [
  { name: 'north', azimuthDeg: 0 },
  { name: 'east', azimuthDeg: 90 },
  { name: 'south', azimuthDeg: 180 },
  { name: 'west', azimuthDeg: 270 },
] as const;

function besideADirection(draw: ItemDraw) {
  for (;;) {
    const evening = eveningWith(draw, 1);
    const light = pickOne(draw.random, wellUp(evening));
    const from = pickOne(draw.random, directions);
    const off = toFists(wrap180(light.azimuthDeg - from.azimuthDeg));
    if (Math.abs(off) < 10 || Math.abs(off) > 60) continue;
    const key = from.azimuthDeg + off;
    const hand = off > 0 ? 'right' : 'left';
    const text = (azimuthDeg: number) => `${whole(wrap360(azimuthDeg))}°`;
    return choice({
      prompt: `${evening.when}. You face due ${from.name}. ${light.name} is ${inFists(Math.abs(off))} to your ${hand}, counted along the horizon. What is its azimuth?`,
      explanation: `Due ${from.name} is ${text(from.azimuthDeg)}. To the right azimuth grows, to the left it shrinks, 10° a fist.`,
      right: {
        text: text(key),
        reason: `${text(from.azimuthDeg)} and ${whole(Math.abs(off))}° to the ${hand}.`,
      },
      wrong: [
        {
          text: text(from.azimuthDeg - off),
          reason: `That is to the ${off > 0 ? 'left' : 'right'}. Azimuth grows to the right: north, east, south, west.`,
          misconception: 'azimuth-anticlockwise',
        },
        {
          text: text(key + 180),
          reason: 'That counts from south. Azimuth starts at north.',
          misconception: 'azimuth-from-south',
        },
        ...(Math.abs(off) < 40
          ? []
          : [
              {
                text: text(from.azimuthDeg + toFists(1.26 * off)),
                reason: 'That is how wide the gap looks. The fist does not stretch.',
                misconception: 'azimuth-gap-looks-wider' as const,
              },
            ]),
      ],
    });
  }
}

function pointAtTheStar(draw: ItemDraw) {
  for (;;) {
    const evening = eveningWith(draw, 4);
    const chosen: Light[] = [];
    for (const light of draw.random.shuffle(wellUp(evening))) {
      const clear = chosen.every(
        (one) => apartDeg(one, light) > 15 && whereabouts(one) !== whereabouts(light),
      );
      if (clear && chosen.length < 5) chosen.push(light);
    }
    const [right, ...wrong] = chosen;
    if (right === undefined || wrong.length < 3) continue;
    const degrees = (light: Light) =>
      `azimuth ${whole(light.azimuthDeg)}°, altitude ${whole(light.altitudeDeg)}°`;
    const spot = (light: Light) => ({ ...onDisc(light), where: capitalised(degrees(light)) });
    return point({
      prompt: `${evening.when}. Your partner has found ${right.name}: ${whereabouts(right)}. Point at it on the chart of the whole sky, which has east on the left.`,
      drawing: discDrawing(
        draw.random.shuffle(chosen).map((light) => starShape(light)),
        {
          alternative: `A round chart of the sky, north at the top and east on the left, with ${String(chosen.length)} lights on it.`,
        },
      ),
      explanation: `${capitalised(whereabouts(right))} is about ${degrees(right)}: a fist is 10°.`,
      right: { ...spot(right), reason: `${right.name}: ${degrees(right)}.` },
      wrong: wrong.map((light) => ({
        ...spot(light),
        reason: `That is ${light.name}, ${whereabouts(light)}.`,
      })),
    });
  }
}

function numbersForWords(draw: ItemDraw) {
  for (;;) {
    const evening = eveningWith(draw, 4);
    const chosen = draw.random
      .shuffle(wellUp(evening))
      .filter((light, i, all) => all.slice(0, i).every((one) => apartDeg(one, light) > 20))
      .slice(0, 5);
    const asked = chosen.slice(0, 4);
    if (asked.length < 3) continue;
    const degrees = (light: Light) =>
      `azimuth ${whole(light.azimuthDeg)}°, altitude ${whole(light.altitudeDeg)}°`;
    return match({
      prompt: `${evening.when}. The mount lists ${asked.map(({ name }) => name).join(', ')} in degrees. Which numbers belong to which?`,
      explanation:
        'Azimuth says which way, from north through east; altitude says how high. A fist is 10°.',
      pairs: asked.map((light) => ({
        left: `${light.name}, ${whereabouts(light)}`,
        right: capitalised(degrees(light)),
        reason: `${whereabouts(light)} is ${degrees(light)}.`,
      })),
      spare: chosen.slice(4).map((light) => capitalised(degrees(light))),
    });
  }
}

function byEyeOrByFist(draw: ItemDraw): ItemBody {
  const evening = eveningWith(draw, 4);
  // So low that it does not seem to be overhead, or beyond.
  const lights = wellUp(evening).filter(({ altitudeDeg }) => altitudeDeg < 42);
  const light = draw.random.pick(lights);
  if (light === undefined) return byEyeOrByFist(draw);
  const altitudeDeg = toFists(light.altitudeDeg);
  const looks = toFists(altitudeDeg * altitudeLooks);
  const text = (deg: number) => `${inFists(deg)} up, at about ${whole(deg)}°`;
  return choice({
    prompt: `${evening.when}. By eye alone, your partner puts ${light.name} at ${whole(looks)}°. Eyes make altitudes about one and a half times too large. What will the fist most likely find?`,
    explanation: `${whole(looks)}° ÷ 1.5 is about ${whole(looks / altitudeLooks)}°.`,
    right: {
      text: text(altitudeDeg),
      reason: `${whole(looks)}° by eye is about ${whole(altitudeDeg)}° by the fist.`,
    },
    wrong: [
      {
        text: text(looks),
        reason: 'That is where it seems to be. Eyes stretch the sky upward; the fist does not.',
        misconception: 'altitude-looks-higher',
      },
      {
        text: text(toFists(looks * 1.3)),
        reason: 'That would be higher still. Eyes make altitudes too large, not too small.',
      },
      {
        text: text(Math.max(5, toFists(looks / 3))),
        reason:
          'That is a third. Eyes make altitudes one and a half times too large, not three times.',
      },
    ],
  });
}

export const fistsAndCompass: ItemFamily = {
  id: 'fists-and-compass',
  lesson: 'choosing-alignment-stars',
  objective: 'place',
  skill: 'choose-stars',
  title: 'Where it stands, by fist and compass',
  version: 2,
  templates: {
    'fists-up': fistsUp,
    'beside-a-direction': besideADirection,
    'point-at-the-star': pointAtTheStar,
    'numbers-for-words': numbersForWords,
    'by-eye-or-by-fist': byEyeOrByFist,
  },
};
