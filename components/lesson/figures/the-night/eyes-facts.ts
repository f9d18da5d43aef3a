import type { Shape } from '@/lib/drawings/drawing';
import { lightNeeded } from '@/lib/night/dark-adaptation';
import { adaptationPoint, drawAdaptation, minutesInTheDark } from '@/lib/drawings/draw-adaptation';

type EyesOf = { minute: number; flash: number | null };
export const startingEyes: EyesOf = { minute: 12, flash: null };
/** When the white torch shines, if it does. */
export const flashMinute = 20;

const flashesOf = ({ flash }: EyesOf): readonly number[] => (flash === null ? [] : [flash]);

const timesNeeded = (eyes: EyesOf): number =>
  lightNeeded(minutesInTheDark(eyes.minute, flashesOf(eyes)));

/** "1300" to two figures: nobody knows an eye more exactly. */
const rounded = (times: number): string => String(Number(times.toPrecision(2)));

export function eyesShapes(eyes: EyesOf): readonly Shape[] {
  const { x, y } = adaptationPoint(eyes.minute, flashesOf(eyes));
  return [
    ...drawAdaptation(flashesOf(eyes), '').shapes,
    { kind: 'circle', cx: x, cy: y, r: 6, fill: 'panel', stroke: 'ink', width: 2.5 },
  ];
}

export function eyesWords(eyes: EyesOf): string {
  const times = timesNeeded(eyes);
  const need =
    times < 1.5
      ? 'your eyes are at their best.'
      : `your eyes need about ${rounded(times)} times as much light as at their best.`;
  const flash =
    eyes.flash === null
      ? ''
      : eyes.minute < eyes.flash
        ? ` At minute ${String(eyes.flash)} a white torch will shine into them.`
        : ` A long look into the white torch at minute ${String(eyes.flash)} set them back to the start.`;
  return `At minute ${String(eyes.minute)} ${need}${flash}`;
}
