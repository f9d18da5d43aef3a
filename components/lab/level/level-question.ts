import { angleInWords } from '@/components/sky/angle-words';
import type { LevelDraft } from '@/lib/grading/bench/level/level-submission';
import type { TiltQuestion } from '@/lib/variants/bench/level/level-variant';
import { windInWords } from './level-words';

export type AskedName = keyof LevelDraft['answers'];

/** Of a landing: how high against where it should be. */
export const heightInWords = (upArcmin: number): string =>
  Math.abs(upArcmin) < 3
    ? 'at the right height'
    : `${angleInWords(upArcmin)} too ${upArcmin > 0 ? 'high' : 'low'}`;

export const leftOverInWords = (arcmin: number): string =>
  arcmin < 0.1 ? 'nothing worth naming: less than 0.1′' : `up to ${angleInWords(arcmin)}`;

export const tiltSupposed = ({ tiltDeg, risesTowardsDeg }: TiltQuestion): string =>
  `Say a base was left ${tiltDeg.toFixed(1)}° off level, rising towards the ${windInWords(risesTowardsDeg)}, and nobody noticed.`;

type Asked = { name: AskedName; legend: string; options: readonly string[] };

/** The three questions on what a tilt does, in the order of an evening. */
export function questionsOf(question: TiltQuestion): readonly Asked[] {
  const { first, second } = question;
  const place = ({ azimuthDeg, altitudeDeg }: TiltQuestion['first']) =>
    `in the ${windInWords(azimuthDeg)}, ${String(altitudeDeg)}° up`;
  return [
    {
      name: 'firstSlew',
      legend: `The first slew, before any alignment, goes to a star ${place(first)}. Where does the tube land?`,
      options: question.firstSlewUpArcmin.map(heightInWords),
    },
    {
      name: 'afterTwoStars',
      legend: `Then it is aligned on that star and on one ${place(second)}, each centred well. How far off are go-tos after that, because of the tilt?`,
      options: question.afterTwoStarsArcmin.map(leftOverInWords),
    },
    {
      name: 'takenAsLevel',
      legend: `Another computer takes every base as level. It is set right on the first star alone. Where does it land on the second?`,
      options: question.takenAsLevelUpArcmin.map(heightInWords),
    },
  ];
}
