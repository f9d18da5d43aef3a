import { compassPoint } from '../wording/compass-points';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { pairWorth } from '../pointing/pair-worth';
import { airmass } from '../sky/extinction';
import { apparentToTrueRefractionDeg } from '../sky/refraction';
import { wrap180 } from '../units/angle';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { whatIsInTheCaseQuantities } from './quantities/what-is-in-the-case';
import { standingItUpQuantities } from './quantities/standing-it-up';
import { levelEnoughQuantities } from './quantities/level-enough';
import { tubeOnAndBalancedQuantities } from './quantities/tube-on-and-balanced';
import { eyepiecesAndViewsQuantities } from './quantities/eyepieces-and-views';
import { finderByDayQuantities } from './quantities/finder-by-day';
import { powerWithoutSmokeQuantities } from './quantities/power-without-smoke';
import { clockAndPlaceQuantities } from './quantities/clock-and-place';
import { alignOnTwoStarsQuantities } from './quantities/align-on-two-stars';
import { whatWentWrongQuantities } from './quantities/what-went-wrong';
import { theNightQuantities } from './quantities/the-night';
import type { Quantity, ReckoningSources, SkyPlace } from './reckoning';

const directionOf = (place: SkyPlace) => directionFromAzAlt(place.azimuthDeg, place.altitudeDeg);

/** A missing word cannot happen: the number of words is checked before a quantity is asked. */
const word = (words: readonly string[], index: number): string => words[index] ?? '';

function worth(words: readonly string[], sources: ReckoningSources) {
  const kit = sources.kit(word(words, 0));
  const eyepiece = kit.eyepieces.find((one) => one.id === kit.observingEyepieceId);
  if (eyepiece === undefined) throw new RangeError(`${kit.id} has no observing eyepiece`);
  return pairWorth(
    kit.telescope,
    fieldRadiusArcmin(kit.telescope, eyepiece),
    sources.place(word(words, 1)),
    sources.place(word(words, 2)),
  );
}

const counted = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "three and a half fists": as an arm's length tells it, to half a fist of 10°. */
function fistsInWords(angleDeg: number): string {
  const halves = Math.round(angleDeg / 5);
  const whole = counted[Math.floor(halves / 2)] ?? String(Math.floor(halves / 2));
  if (halves === 1) return 'half a fist';
  if (halves % 2 === 1) return `${whole} and a half fists`;
  return `${whole} ${halves === 2 ? 'fist' : 'fists'}`;
}

/** "3½": the same for a table. */
export function fistsInFigures(angleDeg: number): string {
  const halves = Math.round(angleDeg / 5);
  const whole = Math.floor(halves / 2);
  return halves % 2 === 0 ? String(whole) : `${whole === 0 ? '' : String(whole)}½`;
}

const keyStar = (words: readonly string[], sources: ReckoningSources) => {
  const { sky, hip } = sources.star(word(words, 0));
  return sky.answerKey.stars.find((star) => star.hip === hip);
};

/** What every lesson can ask of the engine. Angles in degrees unless said. */
const quantitiesOfAll: Readonly<Record<string, Quantity>> = {
  altitude: {
    takes: 'place',
    digits: 0,
    value: (words, { place }) => place(word(words, 0)).altitudeDeg,
  },
  azimuth: {
    takes: 'place',
    digits: 0,
    value: (words, { place }) => place(word(words, 0)).azimuthDeg,
  },
  compass: {
    takes: 'place',
    digits: 0,
    value: (words, { place }) => place(word(words, 0)).azimuthDeg,
    words: (azimuthDeg) => compassPoint(azimuthDeg),
  },
  'fists-up': {
    takes: 'place',
    digits: 1,
    value: (words, { place }) => place(word(words, 0)).altitudeDeg,
    words: fistsInWords,
  },
  magnitude: {
    takes: 'place',
    digits: 1,
    value: (words, { place }) => place(word(words, 0)).magnitude ?? Number.NaN,
  },
  separation: {
    takes: 'place place',
    digits: 0,
    value: (words, { place }) =>
      separationDeg(directionOf(place(word(words, 0))), directionOf(place(word(words, 1)))),
  },
  'azimuth-gap': {
    takes: 'place place',
    digits: 0,
    value: (words, { place }) =>
      Math.abs(wrap180(place(word(words, 0)).azimuthDeg - place(word(words, 1)).azimuthDeg)),
  },
  /** Targets of 100 that land in the observing eyepiece; an approximation. */
  'hit-rate': {
    takes: 'kit place place',
    digits: 0,
    value: (words, sources) => 100 * worth(words, sources).hitRate,
  },
  /** Arcminutes. */
  error: {
    takes: 'kit place place',
    digits: 0,
    value: (words, sources) => worth(words, sources).expectedErrorArcmin ?? Infinity,
  },
  /** How many stars at least 5° up shine brighter, by their catalogue magnitudes. */
  'brighter-stars': {
    takes: 'star',
    digits: 0,
    value: (words, sources) => {
      const { sky } = sources.star(word(words, 0));
      const own = sources.place(word(words, 0)).magnitude ?? Infinity;
      return [...sky.places.values()].filter(
        (one) => one.hip !== null && one.altitudeDeg > 5 && (one.magnitude ?? Infinity) < own,
      ).length;
    },
  },
  /** 1 when the answer key lets the star serve, else 0. */
  usable: {
    takes: 'star',
    digits: 0,
    value: (words, sources) => (keyStar(words, sources)?.usable === true ? 1 : 0),
  },
  /** How many neighbours the answer key warns about. */
  'look-alikes': {
    takes: 'star',
    digits: 0,
    value: (words, sources) => keyStar(words, sources)?.cautions.length ?? 0,
  },
  'usable-stars': {
    takes: 'sky',
    digits: 0,
    value: (words, { sky }) =>
      sky(word(words, 0)).answerKey.stars.filter((star) => star.usable).length,
  },
  /** Of the best pair of a sky, targets of 100. */
  'best-hit-rate': {
    takes: 'sky',
    digits: 0,
    value: (words, { sky }) => 100 * (sky(word(words, 0)).answerKey.pairs[0]?.hitRate ?? 0),
  },
  /** What the answer key gives for choosing the pair, 0–100; 0 when either star may not serve. */
  'pair-mark': {
    takes: 'sky star star',
    digits: 0,
    value: (words, sources) => {
      const hips = [sources.star(word(words, 1)).hip, sources.star(word(words, 2)).hip];
      const pair = sources
        .sky(word(words, 0))
        .answerKey.pairs.find(({ stars }) => stars.every((hip) => hips.includes(hip)));
      return pair?.mark ?? 0;
    },
  },
  'air-mass': {
    takes: 'altitude',
    digits: 1,
    value: (words, { figure }) => airmass(figure(word(words, 0))),
  },
  /** Arcminutes by which a star at an apparent altitude stands too high. */
  'raised-by': {
    takes: 'altitude',
    digits: 0,
    value: (words, { figure }) => 60 * apparentToTrueRefractionDeg(figure(word(words, 0))),
  },
  /** How wide a step of azimuth is on the sky at an altitude. */
  'width-on-sky': {
    takes: 'azimuth-step altitude',
    digits: 1,
    value: (words, { figure }) => {
      const altitudeDeg = figure(word(words, 1));
      return separationDeg(
        directionFromAzAlt(0, altitudeDeg),
        directionFromAzAlt(figure(word(words, 0)), altitudeDeg),
      );
    },
  },
  /** Diameter of a kit's field with its observing eyepiece. */
  'true-field': {
    takes: 'kit',
    digits: 1,
    value: (words, { kit }) => {
      const { telescope, eyepieces, observingEyepieceId } = kit(word(words, 0));
      const eyepiece = eyepieces.find((one) => one.id === observingEyepieceId);
      return eyepiece === undefined ? Number.NaN : fieldRadiusArcmin(telescope, eyepiece) / 30;
    },
  },
};

/** The same with what single lessons ask beyond it. @throws when two have a quantity of one name. */
export const lessonQuantities: Readonly<Record<string, Quantity>> = together([
  quantitiesOfAll,
  whatIsInTheCaseQuantities,
  standingItUpQuantities,
  levelEnoughQuantities,
  tubeOnAndBalancedQuantities,
  eyepiecesAndViewsQuantities,
  finderByDayQuantities,
  powerWithoutSmokeQuantities,
  clockAndPlaceQuantities,
  alignOnTwoStarsQuantities,
  whatWentWrongQuantities,
  theNightQuantities,
]);

function together(all: readonly Readonly<Record<string, Quantity>>[]): Record<string, Quantity> {
  const gathered: Record<string, Quantity> = {};
  for (const [name, quantity] of all.flatMap((one) => Object.entries(one))) {
    if (Object.hasOwn(gathered, name)) throw new Error(`two quantities are called "${name}"`);
    gathered[name] = quantity;
  }
  return gathered;
}
