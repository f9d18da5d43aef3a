import { leastSunDistanceDeg, nearestToSunDeg, type AzAlt } from '../../finder/way-past-sun';
import type { Random } from '../../variants/random';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { inNumber } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';

/** The Sun of an afternoon or a morning, whole fists of 10° up, as a fist would tell it. */
export const drawSun = (random: Random): AzAlt => ({
  azimuthDeg: 10 * random.integer(12, 24),
  altitudeDeg: 10 * random.integer(1, 4),
});

export const fromSunDeg = (at: AzAlt, sun: AzAlt): number => leastSunDistanceDeg(at, at, sun);

/** Near the limit nobody could tell by fists which side of it a thing is on. */
const doubtDeg = 5;
export const isPlain = (fromSun: number): boolean =>
  Math.abs(fromSun - nearestToSunDeg) >= doubtDeg;

export const metres = (distanceM: number): string =>
  distanceM >= 1000 ? `${inNumber(distanceM / 1000, 1)} km` : `${String(distanceM)} m`;

/** "1½ fists", whichever way. */
export function inFists(fists: number): string {
  const count = Math.abs(fists);
  const half = count % 1 === 0 ? '' : '½';
  return `${String(Math.floor(count))}${half} ${count === 1 ? 'fist' : 'fists'}`;
}

/** "4 fists to the right of the Sun" along the horizon. */
export function besideSun(fists: number): string {
  return `${inFists(fists)} to the ${fists > 0 ? 'right' : 'left'} of the Sun`;
}

/** Things that stand on a horizon by day, the far ones and the near ones; distances in metres. */
export const nearThings = [
  'fence post',
  'garden gate',
  'tree trunk',
  'bench',
  'street sign',
] as const;
export const farThings = [
  'chimney',
  'mast',
  'church spire',
  'water tower',
  'pylon',
  'lookout tower',
] as const;

export const drawNear = (random: Random) => ({
  name: pickOne(random, nearThings),
  distanceM: random.integer(6, 20),
});
export const drawFar = (random: Random) => ({
  name: pickOne(random, farThings),
  distanceM: 50 * random.integer(6, 40),
});

const fistWidth = 24;
/** In a strip of 320 for twelve fists, the Sun's own place in the middle at 0 fists. */
export const stripX = (fists: number): number => 160 + fistWidth * fists;

/** The horizon to both sides of the Sun, a mark every fist, and lettered things on it. */
export function stripDrawing(
  alternative: string,
  sunUpFists: number,
  things: readonly { fists: number; letter: string }[],
): ItemDrawing {
  const ground = 150;
  const marks = Array.from({ length: 13 }, (_, i): Shape => {
    const x = stripX(i - 6);
    return { kind: 'line', x1: x, x2: x, y1: ground, y2: ground + 8, stroke: 'strong' };
  });
  return {
    width: 320,
    height: 190,
    alternative,
    shapes: [
      { kind: 'rect', x: 0, y: 0, w: 320, h: ground, fill: 'panel' },
      { kind: 'rect', x: 0, y: ground, w: 320, h: 40, fill: 'sunken' },
      { kind: 'line', x1: 0, x2: 320, y1: ground, y2: ground, stroke: 'strong', width: 2 },
      ...marks,
      {
        kind: 'circle',
        cx: 160,
        cy: ground - fistWidth * sunUpFists,
        r: 9,
        fill: 'lamp',
        stroke: 'ink',
        width: 1.5,
      },
      {
        kind: 'text',
        x: 160,
        y: ground - fistWidth * sunUpFists - 14,
        text: 'Sun',
        anchor: 'middle',
        bold: true,
      },
      ...things.flatMap(({ fists, letter }): Shape[] => [
        {
          kind: 'rect',
          x: stripX(fists) - 5,
          y: ground - 26,
          w: 10,
          h: 26,
          fill: 'soft',
          stroke: 'ink',
        },
        {
          kind: 'text',
          x: stripX(fists),
          y: ground - 32,
          text: letter,
          anchor: 'middle',
          bold: true,
        },
      ]),
      { kind: 'text', x: 160, y: 180, text: 'a mark every fist (10°)', anchor: 'middle', size: 13 },
    ],
  };
}
