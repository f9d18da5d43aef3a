import { arcminuteInWords } from '@/components/sky/angle-words';
import { SkyPicture, type SkyPicturePair } from '@/components/sky/sky-picture';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import { Meter } from '@/components/ui/meter';
import { Notice } from '@/components/ui/notice';
import type { PairFigures } from '@/lib/grading/pair-result';
import type { RunResult } from '@/lib/grading/run-result';
import { markText } from '../mark-text';
import { MarksTable } from '../marks-table';
import type { DebriefSky } from './run-debrief-sky';
import { RunResultAlignment } from './run-result-alignment';
import { RunResultStar } from './run-result-star';
import {
  achievedInWords,
  minutesText,
  runAdviceInWords,
  runCriterionInWords,
  startInWords,
  sunGateInWords,
} from './run-result-words';

type RunResultViewProps = {
  variant: DebriefSky;
  result: RunResult;
  /** The stars of the picture's background; without them only pairs and paths are drawn. */
  stars?: readonly SkyPictureStar[];
  /** Where the page shows the mark already, it need not stand here again. */
  markShownAbove?: boolean;
};

/** What came of an alignment run, for student and teacher alike: the mark, each star, the alignment. */
export function RunResultView({
  variant,
  result,
  stars = [],
  markShownAbove = false,
}: RunResultViewProps) {
  const worth = achievedInWords(result);
  return (
    <div className="space-y-8">
      {result.gates.map((gate) => (
        <Notice
          key={`${gate.id} ${String(gate.atMs)}`}
          tone="danger"
          title="Not yet: too close to the Sun"
        >
          <p>{sunGateInWords(gate)}</p>
        </Notice>
      ))}
      <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)] print:grid-cols-[minmax(0,1fr)_7.5cm]">
        <div className="space-y-6">
          <div className="max-w-measure space-y-3">
            <h3 className="text-sm font-semibold text-soft">One thing to do differently</h3>
            <p className="text-lg leading-snug font-semibold">{runAdviceInWords(result.advice)}</p>
            <p className="text-sm text-soft">{arcminuteInWords}</p>
            {markShownAbove ? null : (
              <Meter
                value={result.total}
                label="Mark"
                valueText={`${markText(result.total)} of 100`}
              />
            )}
            {worth === null ? null : <p>{worth}</p>}
          </div>
          <Marks result={result} />
          <p className="max-w-measure text-sm">
            {startInWords(result.start)} {needleText(result.start.declinationDeg)} The run took{' '}
            {minutesText(result.minutes)} under the sky.
          </p>
        </div>
        <SkyPicture
          title={pictureInWords(result)}
          stars={stars}
          horizon={variant.scenario.horizon}
          clouds={variant.scenario.clouds}
          moon={variant.frame.moon}
          sun={variant.frame.sun}
          pairs={picturePairs(result)}
          paths={result.stars.map(({ path }) => path)}
          named={result.stars}
        />
      </div>
      {result.stars.length === 0 ? null : (
        <div className="grid gap-4 xl:grid-cols-2 print:block print:space-y-4">
          {result.stars.map((star, index) => (
            <RunResultStar key={index} star={star} which={index === 0 ? 1 : 2} sky={variant} />
          ))}
        </div>
      )}
      <RunResultAlignment result={result} sky={variant} />
    </div>
  );
}

const needleText = (declinationDeg: number): string =>
  Math.abs(declinationDeg) < 0.05
    ? 'A compass needle points to true north there.'
    : `A compass needle points ${Math.abs(declinationDeg).toFixed(1)}° ${declinationDeg > 0 ? 'east' : 'west'} of true north there.`;

const placesOf = (pair: PairFigures): SkyPicturePair['stars'] => [
  { ...pair.positions[0], name: pair.names[0] },
  { ...pair.positions[1], name: pair.names[1] },
];

function picturePairs({ pair: { chosen, best } }: RunResult): SkyPicturePair[] {
  return [
    ...(best === null ? [] : [{ kind: 'best' as const, stars: placesOf(best) }]),
    ...(chosen === null ? [] : [{ kind: 'chosen' as const, stars: placesOf(chosen) }]),
  ];
}

function pictureInWords({ stars, pair: { chosen, best } }: RunResult): string {
  const ways =
    stars.length === 0
      ? ''
      : ` Thin lines: the way of the tube to ${stars.map(({ name }) => name).join(' and to ')}.`;
  const own =
    chosen === null ? '' : ` Rings and a solid line: ${chosen.names.join(' and ')}, as meant.`;
  const other =
    best === null ? '' : ` Squares and a broken line: the best pair, ${best.names.join(' and ')}.`;
  return `The whole sky with horizon and stars.${ways}${own}${other}`;
}

function Marks({ result }: { result: RunResult }) {
  return (
    <MarksTable
      rows={result.criteria.map((criterion) => ({
        ...criterion,
        name: runCriterionInWords(criterion, result),
      }))}
    />
  );
}
