import { wrap180 } from '../../units/angle';
import { whereabouts } from '../clock-and-place/words';
import { point } from '../build-item';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemDraw } from '../item-family';
import { magnitudeInWords, whole, type Light } from './drawn-evening';
import { decided, drawCase, neighboursOf, whyLike, whyNone, type Neighbour } from './neighbours';

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
      width: 320,
      height: size,
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

/** A drawing of the star's surroundings, with what could be taken for it among the rest. */
export function pointAtTheLookAlike(draw: ItemDraw) {
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
