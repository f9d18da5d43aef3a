import type { NoPerfectRun, PerfectRun } from '../grading/perfect-run';
import type { AnswerKey } from '../pointing/answer-key';
import { rows } from './table-rows';

/** What a perfect operator gets, as text for people, with what the answer key led to expect beside it. */
export function perfectRunTable(run: PerfectRun | NoPerfectRun, key: AnswerKey): string {
  const heading = 'A perfect operator on this mount';
  if (run.stars === null) return `${heading}\n${reasons[run.reason]}`;
  const names = new Map(key.stars.map((star) => [star.hip, star.name]));
  const nameOf = (hip: number) => names.get(hip) ?? `HIP ${String(hip)}`;
  const [first, second] = run.stars;
  const expected = key.pairs.find(
    ({ stars }) => stars.includes(first) && stars.includes(second),
  )?.hitRate;
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  const facts: string[][] = [
    ['stars', `${nameOf(first)}, then ${nameOf(second)}`],
    ['time', `${run.minutes.toFixed(1)} minutes`],
    ['the computer', outcomes[run.outcome.kind]],
    ['mismatch', figure(run.outcome.mismatchArcmin, '′', 1)],
    ['tilt of the base', figure(run.outcome.baseTiltDeg, '°', 2)],
    ['zero of the altitude', figure(run.outcome.altitudeZeroDeg, '°', 2)],
    ['in the eyepiece', run.hitRate === null ? none : percent(run.hitRate)],
    ['expected, centred as usual', expected === undefined ? none : percent(expected)],
    ['missed by (rms)', figure(run.rmsArcmin, '′', 1)],
  ];
  const thirds = run.thirds.map(({ hip, missArcmin, inField }) => [
    nameOf(hip),
    figure(missArcmin, '′', 1),
    inField ? 'yes' : 'no',
  ]);
  return [
    `${heading}\n${rows(['', ''], facts).trim()}`,
    ...(thirds.length === 0 ? [] : [rows(['to check on', 'missed by', 'in the eyepiece'], thirds)]),
  ].join('\n\n');
}

const none = '–';
const figure = (value: number | null, unit: string, digits: number): string =>
  value === null ? none : `${value.toFixed(digits).replace('-', '−')}${unit}`;

const reasons: Record<NoPerfectRun['reason'], string> = {
  'no-usable-pair': 'No pair of usable stars: nobody can align on two stars here and now.',
  'believed-below-the-horizon':
    'By the clock and place that were entered, one star of every pair is below the horizon: the mount will not go there.',
};

const outcomes: Record<PerfectRun['outcome']['kind'], string> = {
  agree: 'says that the two agree',
  disagree: 'says that the two disagree',
  'absurd-zero': 'finds a zero that no mount has',
  'base-on-its-side': 'finds the base on its side',
  undetermined: 'cannot tell how it stands',
};
