import { lookAlikeDistanceDeg, lookAlikeFainterBy } from '../../pointing/cautions';
import type { ItemDraw } from '../item-family';
import { apartDeg, drawEvening, whole, type DrawnEvening, type Light } from './drawn-evening';

/** How far from both limits a neighbour must be, so that nobody who uses the rule can doubt it. */
const clear = { apartDeg: 1, magnitudes: 0.15 };

export type Neighbour = { light: Light; apart: number; fainter: number; lookAlike: boolean };

/** The bright neighbours of a star that the rule decides beyond doubt, nearest first. */
export function neighboursOf(star: Light, evening: DrawnEvening): Neighbour[] {
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

export const decided = ({ apart, fainter }: Neighbour): boolean =>
  apart > lookAlikeDistanceDeg + clear.apartDeg ||
  (apart < lookAlikeDistanceDeg - clear.apartDeg &&
    Math.abs(fainter - lookAlikeFainterBy) > clear.magnitudes) ||
  (Math.abs(apart - lookAlikeDistanceDeg) <= clear.apartDeg &&
    fainter > lookAlikeFainterBy + clear.magnitudes);

type Case = { evening: DrawnEvening; star: Light; like: Neighbour; others: readonly Neighbour[] };

/** A star with one look-alike, and other lights that are none. */
export function drawCase(draw: ItemDraw, others: number): Case {
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

export const whyNone = ({ apart, fainter, light }: Neighbour): string =>
  apart > lookAlikeDistanceDeg + clear.apartDeg
    ? `${light.name} is ${whole(apart)}° away, more than a fist: nobody takes it for the other.`
    : `${light.name} is near, but ${fainter.toFixed(1)} magnitudes fainter: that shows at a glance.`;
export const whyLike = ({ apart, fainter, light }: Neighbour): string =>
  `${light.name} is only ${apart.toFixed(apart < 1 ? 1 : 0)}° away and ${
    fainter < -0.1 ? 'even brighter' : fainter < 0.2 ? 'as bright' : 'nearly as bright'
  }.`;
