import { firstSlew, takenAsLevel, type SkyPlace } from '../../../levelling/tilt-consequences';
import { wrap360 } from '../../../units/angle';
import type { Random } from '../../random';
import type { TiltQuestion } from './level-variant';

/** Eighths of a circle from the high side: the answers there are t, 0.7 t, 0, −0.7 t and −t. */
const eighths = [0, 1, 2, 3, 4, 5, 6, 7] as const;
const cosOfEighth = (eighth: number): number => Math.cos((eighth * Math.PI) / 4);

/** Two answers to choose among differ by at least this share of the tilt. */
const apartShare = 0.25;

export function drawTiltQuestion(random: Random): TiltQuestion {
  const tiltDeg = random.integer(5, 12) / 10;
  const risesTowardsDeg = 45 * random.integer(0, 7);
  // The second star a quarter or three eighths of a circle on, where the tilt does something else.
  const pairs = eighths.flatMap((one) =>
    [2, 3, 5, 6].map((further) => ({ one, other: (one + further) % 8 })),
  );
  const telling = pairs.filter(
    ({ one, other }) => Math.abs(cosOfEighth(other) - cosOfEighth(one)) > 0.69,
  );
  const pair = random.pick(telling);
  if (pair === undefined) throw new Error('there are pairs of directions that differ');
  const star = (eighth: number): SkyPlace => ({
    azimuthDeg: wrap360(risesTowardsDeg + 45 * eighth),
    altitudeDeg: random.integer(25, 50),
  });
  const first = star(pair.one);
  const second = star(pair.other);
  const tilt = { tiltDeg, risesTowardsDeg };
  const t = 60 * tiltDeg;

  const slewed = firstSlew(tilt, first).upArcmin;
  const others = [1, Math.SQRT1_2, 0, -Math.SQRT1_2, -1]
    .map((share) => share * t)
    .sort((a, b) => Math.abs(a - slewed) - Math.abs(b - slewed))
    .slice(1);
  const kept = takenAsLevel(tilt, first, second).upArcmin;
  return {
    ...tilt,
    first,
    second,
    firstSlewUpArcmin: highestFirst([slewed, ...others]),
    afterTwoStarsArcmin: [0, t / 10, t / 2, t].map(whole),
    takenAsLevelUpArcmin: highestFirst([
      kept,
      ...wrongButTempting(random, kept, firstSlew(tilt, second).upArcmin, t),
    ]),
  };
}

/** Four wrong answers: as if the setting did nothing, or cured all, or the other way, and some more. */
function wrongButTempting(random: Random, kept: number, unset: number, t: number): number[] {
  const likely = [unset, 0, -kept];
  const more = random.shuffle([t, -t, t / 2, -t / 2, 1.5 * t, -1.5 * t, 2 * t, -2 * t]);
  const chosen: number[] = [];
  for (const value of [...likely, ...more]) {
    const clear = [kept, ...chosen].every((other) => Math.abs(other - value) >= apartShare * t);
    if (clear && chosen.length < 4) chosen.push(value);
  }
  return chosen;
}

// Adding nought turns −0, which JSON does not know, into 0.
const whole = (arcmin: number): number => Math.round(arcmin) + 0;

const highestFirst = (arcmin: readonly number[]): number[] =>
  arcmin.map(whole).sort((a, b) => b - a);
