import { angleInWords } from '@/components/sky/angle-words';
import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';
import { wrap180 } from '@/lib/units/angle';

/** What the mount says in one sentence, in the words of its own control. */
export function outcomeInWords(outcome: AlignmentOutcome): string {
  switch (outcome.kind) {
    case 'agree':
      return `These two agree to ${Math.abs(outcome.mismatchArcmin) < 1 ? '1′ or better' : angleInWords(outcome.mismatchArcmin)}.`;
    case 'disagree':
      return `These two disagree by ${angleInWords(outcome.mismatchArcmin)}.`;
    case 'absurd-zero':
      return outcome.altitudeZeroDeg === null
        ? 'These two cannot both be right: no zero of the altitude fits them.'
        : `These two agree only if the altitude reads ${Math.abs(outcome.altitudeZeroDeg).toFixed(1)}° too ${outcome.altitudeZeroDeg > 0 ? 'little' : 'much'}: more than the mount will believe.`;
    case 'base-on-its-side':
      // A lean of less than this is no base on its side, and a wrong clock can cause one.
      return outcome.baseTiltDeg < 30
        ? `The base would lean by ${outcome.baseTiltDeg.toFixed(1)}°: more than the mount will believe.`
        : 'The base would lie on its side: are the two stars swapped?';
    case 'undetermined':
      return 'These two leave it open how the base stands.';
  }
}

export type OutcomeFigure = { name: string; value: string };

/**
 * How far the mount had turned from true north when its azimuth was set, positive to the right.
 * The base takes north to the reading of north, which is as far from zero the other way.
 */
function turnedFromNorthDeg(outcome: Extract<AlignmentOutcome, { kind: 'agree' }>): number {
  // The second column, row by row: what the base makes of north.
  const { 1: x, 4: y } = outcome.model.base;
  return wrap180((-Math.atan2(x, y) * 180) / Math.PI);
}

const mismatchFigure = (mismatchArcmin: number): OutcomeFigure => ({
  name: 'Between the stars less between the readings',
  value: angleInWords(mismatchArcmin),
});

const signedText = (angleDeg: number, positive: string, negative: string): string =>
  Math.abs(angleDeg) * 60 < 0.5
    ? 'nothing'
    : `${angleInWords(angleDeg * 60)} ${angleDeg > 0 ? positive : negative}`;

/**
 * Why a good agreement proves little here: the zero was chosen so that the angles agree, and no
 * redundancy is left (design, "Fit").
 */
export const solvedZeroNote =
  'This mount solves for the altitude zero, so two stars almost always agree. Ask whether the zero and the lean are those of this telescope.';

/** The figures behind the sentence. `solvesForZero`: only such a computer has found a zero. */
export function outcomeFigures(
  outcome: AlignmentOutcome,
  solvesForZero: boolean,
): readonly OutcomeFigure[] {
  switch (outcome.kind) {
    case 'agree':
      return [
        ...(solvesForZero ? [] : [mismatchFigure(outcome.mismatchArcmin)]),
        { name: 'The base leans by', value: angleInWords(outcome.baseTiltDeg * 60) },
        {
          name: 'At the start it stood beside north by',
          value: signedText(turnedFromNorthDeg(outcome), 'to the right', 'to the left'),
        },
        ...(solvesForZero
          ? [
              {
                name: 'The altitude reads',
                value: signedText(outcome.model.altitudeZeroDeg, 'too little', 'too much'),
              },
            ]
          : []),
      ];
    case 'disagree':
      return [mismatchFigure(outcome.mismatchArcmin)];
    case 'absurd-zero':
      return outcome.altitudeZeroDeg === null
        ? []
        : [
            {
              name: 'The altitude would read',
              value: signedText(outcome.altitudeZeroDeg, 'too little', 'too much'),
            },
          ];
    case 'base-on-its-side':
      return [
        mismatchFigure(outcome.mismatchArcmin),
        { name: 'The base would lean by', value: angleInWords(outcome.baseTiltDeg * 60) },
      ];
    case 'undetermined':
      return [];
  }
}
