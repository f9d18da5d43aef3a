import { lookAlikeDistanceDeg, lookAlikeFainterBy } from '../../pointing/cautions';
import { wrap180 } from '../../units/angle';
import { inFists, pickSome, whereabouts } from '../clock-and-place/words';
import { choice, match, numeric, point, several } from '../build-item';
import type { ItemDrawing, Shape } from '../drawing';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  apartDeg,
  drawEvening,
  magnitudeInWords,
  whole,
  type DrawnEvening,
  type Light,
} from './drawn-evening';

/** How far from both limits a neighbour must be, so that nobody who uses the rule can doubt it. */
const clear = { apartDeg: 1, magnitudes: 0.15 };

type Neighbour = { light: Light; apart: number; fainter: number; lookAlike: boolean };

/** The bright neighbours of a star that the rule decides beyond doubt, nearest first. */
function neighboursOf(star: Light, evening: DrawnEvening): Neighbour[] {
  return evening.lights
    .filter((light) => light !== star)
    .map((light) => ({
      light,
      apart: apartDeg(star, light),
      fainter: light.magnitude - star.magnitude,
    }))
    .map((one) => ({
      ...one,
      lookAlike: one.apart < lookAlikeDistanceDeg && one.fainter < lookAlikeFainterBy,
    }))
    .sort((a, b) => a.apart - b.apart);
}

const decided = ({ apart, fainter }: Neighbour): boolean =>
  apart > lookAlikeDistanceDeg + clear.apartDeg ||
  (apart < lookAlikeDistanceDeg - clear.apartDeg &&
    Math.abs(fainter - lookAlikeFainterBy) > clear.magnitudes) ||
  (Math.abs(apart - lookAlikeDistanceDeg) <= clear.apartDeg &&
    fainter > lookAlikeFainterBy + clear.magnitudes);

type Case = { evening: DrawnEvening; star: Light; like: Neighbour; others: readonly Neighbour[] };

/** A star with one look-alike, and other lights that are none. */
function drawCase(draw: ItemDraw, others: number): Case {
  for (;;) {
    const evening = drawEvening(draw);
    const star = draw.random.pick(
      evening.lights.filter(
        (light) =>
          light.kind === 'star' &&
          light.magnitude < 2.3 &&
          light.altitudeDeg > 15 &&
          light.cautions.length > 0,
      ),
    );
    if (star === undefined) continue;
    const all = neighboursOf(star, evening);
    // The answer key goes by how bright things look through the air; the question by what is on paper.
    const like = all.find(
      (one) =>
        one.lookAlike &&
        star.cautions.some(({ neighbourName }) => neighbourName === one.light.name),
    );
    const none = all.filter((one) => !one.lookAlike && decided(one) && one.light.altitudeDeg > 8);
    if (like === undefined || !decided(like) || none.length < others) continue;
    return { evening, star, like, others: none };
  }
}

const whyNone = ({ apart, fainter, light }: Neighbour): string =>
  apart > lookAlikeDistanceDeg + clear.apartDeg
    ? `${light.name} is ${whole(apart)}° away, more than a fist: nobody takes it for the other.`
    : `${light.name} is near, but ${fainter.toFixed(1)} magnitudes fainter: that shows at a glance.`;
const whyLike = ({ apart, fainter, light }: Neighbour): string =>
  `${light.name} is only ${apart.toFixed(apart < 1 ? 1 : 0)}° away and ${
    fainter < -0.1 ? 'even brighter' : fainter < 0.2 ? 'as bright' : 'nearly as bright'
  }.`;

function whoCouldMislead(draw: ItemDraw) {
  const { evening, star, like, others } = drawCase(draw, 3);
  const near = others.slice(0, 6);
  const text = ({ light, apart }: Neighbour) =>
    `${light.name}, ${magnitudeInWords(light.magnitude)}, ${apart < 3 ? apart.toFixed(1) : whole(apart)}° away`;
  return choice({
    prompt: `${evening.when}. You would like ${star.name}, ${whereabouts(star)}, ${magnitudeInWords(star.magnitude)}. Which neighbour could be taken for it?`,
    explanation: `A look-alike is less than a fist away and not much fainter: less than 0.7 magnitudes. ${whyLike(like)}`,
    right: {
      text: text(like),
      reason: `${whyLike(like)} Say aloud which is which before you confirm.`,
    },
    wrong: pickSome(draw.random, near, 3).map((one) => ({
      text: text(one),
      reason: whyNone(one),
    })),
  });
}

function howFarOffThen(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like } = drawCase(draw, 0);
    const fists = inFists(like.apart);
    const key = 5 * Math.round(like.apart / 5);
    if (key < 5) continue;
    return numeric({
      prompt: `${evening.when}. ${like.light.name} stands ${fists} from ${star.name}. Somebody centres ${like.light.name}, and tells the mount that it is ${star.name}. By about how many degrees is that wrong?`,
      ...{ unit: 'degrees', key },
      tolerance: { mode: 'absolute', full: 2, zero: 5 },
      explanation: `By as much as the two are apart: ${fists}, and a fist is 10°. Exactly, it is ${like.apart.toFixed(1)}°.`,
      slips: [
        {
          gives: 0,
          reason:
            'They look alike, but they are not in one place. The mount takes your word for it.',
        },
        { gives: key / 10, reason: 'That is the number of fists. Each stands for 10°.' },
        { gives: 10 * key, reason: 'A fist is 10°, not 100°.' },
      ],
    });
  }
}

function needsCare(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like } = drawCase(draw, 0);
    const candidates = evening.lights
      .filter(
        (light) =>
          light.kind === 'star' && light !== star && light !== like.light && light.altitudeDeg > 15,
      )
      .map((light) => ({ light, near: neighboursOf(light, evening)[0] }))
      .flatMap(({ light, near }) => (near === undefined || !decided(near) ? [] : [{ light, near }]))
      .filter(({ light, near }) => near.lookAlike === light.cautions.length > 0);
    const chosen = [{ light: star, near: like }, ...pickSome(draw.random, candidates, 4)].filter(
      ({ light }, i, all) => all.findIndex((one) => one.light.name === light.name) === i,
    );
    // Its nearest neighbour must be what decides: a second one farther off is not told.
    const fair = chosen.filter(
      ({ light, near }) =>
        neighboursOf(light, evening)
          .slice(0, 6)
          .every((one) => decided(one)) && neighboursOf(light, evening)[0]?.light === near.light,
    );
    const right = fair.filter(({ near }) => near.lookAlike);
    const wrong = fair.filter(
      ({ light, near }) =>
        !near.lookAlike && neighboursOf(light, evening).every((one) => !one.lookAlike),
    );
    if (right.length === 0 || wrong.length < 2 || right.length + wrong.length < 4) continue;
    const fainter = (one: Neighbour) =>
      Math.abs(one.fainter) < 0.05
        ? 'just as bright'
        : `${Math.abs(one.fainter).toFixed(1)} mag ${one.fainter > 0 ? 'fainter' : 'brighter'}`;
    const text = ({ light, near }: { light: Light; near: Neighbour }) =>
      `${light.name}: nearest is ${near.light.name}, ${near.apart < 3 ? near.apart.toFixed(1) : whole(near.apart)}° away, ${fainter(near)}`;
    return several({
      prompt: `${evening.when}. For ${[...right, ...wrong]
        .map(({ light }) => light.name)
        .sort()
        .join(', ')} you have looked up the nearest bright light. Which of them need care?`,
      explanation:
        'Care is needed where something less than a fist (10°) away is brighter, or less than 0.7 magnitudes fainter.',
      right: right.map((one) => ({ text: text(one), reason: whyLike(one.near) })),
      wrong: wrong.map((one) => ({ text: text(one), reason: whyNone(one.near) })),
    });
  }
}

function whyOrWhyNot(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like, others } = drawCase(draw, 2);
    const far = others.find(({ apart }) => apart > 12);
    const faint = others.find(({ apart, fainter }) => apart < 9 && fainter > 0.9);
    const planet = others.find(({ light, apart }) => light.kind === 'planet' && apart > 12);
    const chosen = [
      { one: like, verdict: 'Could be taken for it' },
      ...(faint === undefined ? [] : [{ one: faint, verdict: 'Near, but too faint' }]),
      ...(far === undefined ? [] : [{ one: far, verdict: 'Bright, but too far off' }]),
      ...(planet === undefined || planet === far
        ? []
        : [{ one: planet, verdict: 'A planet, and too far off' }]),
    ];
    if (chosen.length < 3) continue;
    if (far?.light.kind === 'planet') continue;
    return match({
      prompt: `${evening.when}. You would like ${star.name}, ${magnitudeInWords(star.magnitude)}. What of its neighbours ${draw.random
        .shuffle(chosen)
        .map(({ one }) => one.light.name)
        .join(', ')}?`,
      explanation:
        'A look-alike is less than a fist away, and brighter or less than 0.7 magnitudes fainter.',
      pairs: chosen.map(({ one, verdict }) => ({
        left: `${one.light.name}, ${magnitudeInWords(one.light.magnitude)}, ${one.apart < 3 ? one.apart.toFixed(1) : whole(one.apart)}° away`,
        right: verdict,
        reason: one.lookAlike ? whyLike(one) : whyNone(one),
      })),
      spare: ['Near, but too faint', 'Bright, but too far off'],
    });
  }
}

const pxPerDeg = 7;
const size = 300;

/** The sky round a star, upright, with dots by brightness; 20° to each side. */
function fieldOf(
  star: Light,
  shown: readonly Light[],
): { drawing: ItemDrawing; at: (light: Light) => { x: number; y: number } } {
  const at = (light: Light) => ({
    x: Math.round(
      size / 2 +
        10 +
        pxPerDeg *
          wrap180(light.azimuthDeg - star.azimuthDeg) *
          Math.cos((light.altitudeDeg * Math.PI) / 180),
    ),
    y: Math.round(size / 2 - pxPerDeg * (light.altitudeDeg - star.altitudeDeg)),
  });
  const dots = [star, ...shown].map((light): Shape => {
    const { x, y } = at(light);
    return {
      kind: 'circle',
      cx: x,
      cy: y,
      r: Math.round(10 * Math.max(1.5, 7 - 2 * light.magnitude)) / 10,
      fill: 'on-sky',
    };
  });
  const own = at(star);
  return {
    at,
    drawing: {
      ...{ width: 320, height: size },
      shapes: [
        { kind: 'rect', x: 0, y: 0, w: 320, h: size, fill: 'sky' },
        {
          kind: 'circle',
          cx: own.x,
          cy: own.y,
          r: 10 * pxPerDeg,
          stroke: 'sky-line',
          width: 1,
          dashed: true,
        },
        ...dots,
        { kind: 'text', x: own.x + 10, y: own.y - 10, text: star.name, size: 13, tone: 'sky-lamp' },
      ],
      alternative: `The sky round ${star.name}, 20° to each side; a dashed circle is a fist away from it. The bigger a dot, the brighter the light. ${star.name} has ${magnitudeInWords(star.magnitude)}.`,
    },
  };
}

function pointAtTheLookAlike(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like } = drawCase(draw, 0);
    if (like.apart < 2.5) continue;
    const field = fieldOf(star, []);
    const inside = ({ light }: Neighbour): boolean => {
      const { x, y } = field.at(light);
      return x > 12 && x < 308 && y > 12 && y < size - 12;
    };
    const shown = neighboursOf(star, evening).filter((one) => inside(one) && decided(one));
    const wrong = shown.filter(({ lookAlike }) => !lookAlike);
    const likes = shown.filter(({ lookAlike }) => lookAlike);
    const undecided = neighboursOf(star, evening).some((one) => inside(one) && !decided(one));
    const alone = likes.length === 1 && likes[0]?.light === like.light;
    if (undecided || !alone || wrong.length < 2) continue;
    const chosen = wrong.slice(0, 4);
    const { drawing, at } = fieldOf(
      star,
      [like, ...chosen].map(({ light }) => light),
    );
    const where = ({ light, apart }: Neighbour) =>
      `${apart < 3 ? apart.toFixed(1) : whole(apart)}° from ${star.name}, ${magnitudeInWords(light.magnitude)}`;
    const spots = [like, ...chosen];
    if (new Set(spots.map(where)).size < spots.length) continue;
    return point({
      prompt: `${evening.when}. You would like ${star.name}, ${whereabouts(star)}. Point at the light that could be taken for it.`,
      drawing,
      explanation: `Inside the dashed circle, a fist away at most, and not much fainter: ${like.light.name}.`,
      right: { ...at(like.light), where: where(like), reason: whyLike(like) },
      wrong: chosen.map((one) => ({ ...at(one.light), where: where(one), reason: whyNone(one) })),
    });
  }
}

export const lookAlikes: ItemFamily = {
  id: 'look-alikes',
  lesson: 'choosing-alignment-stars',
  objective: 'look-alike',
  skill: 'choose-stars',
  title: 'What could be taken for your star',
  version: 1,
  templates: {
    'who-could-mislead': whoCouldMislead,
    'how-far-off-then': howFarOffThen,
    'needs-care': needsCare,
    'why-or-why-not': whyOrWhyNot,
    'point-at-the-look-alike': pointAtTheLookAlike,
  },
};
