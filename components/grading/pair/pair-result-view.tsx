import type { PairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { SkyPicture } from '@/components/sky/sky-picture';
import type { SkyPicturePair } from '@/components/sky/sky-picture';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import { Meter } from '@/components/ui/meter';
import { Panel } from '@/components/ui/panel';
import type { PairFigures, PairResult } from '@/lib/grading/pair-result';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import { ErrorMapLegend, ErrorMapPicture } from '../error-map-picture';
import { markText } from '../mark-text';
import { MarksTable } from '../marks-table';
import { PairResultStars } from './pair-result-stars';
import {
  adviceInWords,
  criterionInWords,
  errorWordsFor,
  hitRateInWords,
  noGeometryInWords,
  ofHundred,
} from './pair-result-words';

type PairResultViewProps = {
  result: PairResult;
  sky: PairLabSky;
  /** The stars of the picture's background; without them only the pairs are drawn. */
  stars?: readonly SkyPictureStar[];
  /** Where the page shows the mark already, it need not stand here again. */
  markShownAbove?: boolean;
};

/** What came of a choice: the mark and why, each star, the pair beside the best, over the whole sky. */
export function PairResultView({
  result,
  sky,
  stars = [],
  markShownAbove = false,
}: PairResultViewProps) {
  const hits = hitRateInWords(result);
  const fieldArcmin = fieldRadiusArcmin(sky.telescope, sky.eyepiece);
  return (
    <div className="space-y-8">
      <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)]">
        <div className="space-y-6">
          <div className="max-w-measure space-y-3">
            <p className="text-lg leading-snug font-semibold">
              {adviceInWords(result.advice, result)}
            </p>
            {markShownAbove ? null : (
              <Meter
                value={result.total}
                label="Mark"
                valueText={`${markText(result.total)} of 100`}
              />
            )}
            {hits === null ? null : <p>{hits}</p>}
          </div>
          <PairFiguresTable result={result} />
          <MarkTable result={result} />
        </div>
        <SkyPicture
          title={pictureInWords(result)}
          stars={stars}
          horizon={sky.horizon}
          clouds={sky.clouds}
          moon={sky.frame.moon}
          sun={sky.frame.sun}
          limits={sky.settings}
          pairs={picturePairs(result)}
        />
      </div>
      <PairResultStars stars={result.stars} givenHip={sky.givenHip} />
      <ErrorMaps result={result} sky={sky} fieldArcmin={fieldArcmin} />
    </div>
  );
}

const placesOf = (pair: PairFigures): SkyPicturePair['stars'] => [
  { ...pair.positions[0], name: pair.names[0] },
  { ...pair.positions[1], name: pair.names[1] },
];

const samePair = (a: PairFigures, b: PairFigures): boolean =>
  a.stars.every((hip) => b.stars.includes(hip));

function picturePairs({ chosen, best }: PairResult): SkyPicturePair[] {
  return [
    ...(best === null ? [] : [{ kind: 'best' as const, stars: placesOf(best) }]),
    ...(chosen === null ? [] : [{ kind: 'chosen' as const, stars: placesOf(chosen) }]),
  ];
}

function pictureInWords({ chosen, best }: PairResult): string {
  const own = chosen === null ? '' : ` The chosen pair: ${chosen.names.join(' and ')}.`;
  const other =
    best === null ? ' No pair would have done.' : ` The best pair: ${best.names.join(' and ')}.`;
  return `The whole sky with horizon and stars.${own}${other}`;
}

function PairFiguresTable({ result: { chosen, best } }: { result: PairResult }) {
  const columns = [
    { title: 'Your pair', mark: 'rings, solid line', pair: chosen },
    { title: 'The best pair', mark: 'squares, broken line', pair: best },
  ].filter((column): column is typeof column & { pair: PairFigures } => column.pair !== null);
  if (columns.length === 0) return null;
  const missInWords = errorWordsFor(...columns.map(({ pair }) => pair.expectedErrorArcmin));
  const rows: { head: string; cell: (pair: PairFigures) => string }[] = [
    { head: 'Apart on the sky', cell: (pair) => `${pair.separationDeg.toFixed(1)}°` },
    { head: 'Expected miss', cell: (pair) => missInWords(pair.expectedErrorArcmin) },
    { head: 'Targets in the eyepiece', cell: (pair) => `about ${ofHundred(pair.hitRate)} of 100` },
  ];
  return (
    <div className="table-frame overflow-x-auto">
      <table>
        <caption className="sr-only">
          {columns.length === 2 ? 'The chosen pair beside the best one' : columns[0]?.title}
        </caption>
        <thead>
          <tr>
            <td />
            {columns.map(({ title, mark, pair }) => (
              <th key={title} scope="col">
                {title}
                <span className="block font-normal">{pair.names.join(' and ')}</span>
                <span className="block text-xs font-normal text-soft">In the picture: {mark}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ head, cell }) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {columns.map(({ title, pair }) => (
                <td key={title}>{cell(pair)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function MarkTable({ result }: { result: PairResult }) {
  return (
    <MarksTable
      rows={result.criteria.map((criterion) => {
        const reason = noGeometryInWords(criterion, result);
        return {
          ...criterion,
          name: criterionInWords(criterion, result),
          below:
            reason === null ? null : (
              <span className="block text-sm font-normal text-soft">{reason}</span>
            ),
        };
      })}
    />
  );
}

function ErrorMaps({
  result,
  sky,
  fieldArcmin,
}: {
  result: PairResult;
  sky: PairLabSky;
  fieldArcmin: number;
}) {
  const { chosen, best } = result;
  if (chosen === null && best === null) return null;
  const same = chosen !== null && best !== null && samePair(chosen, best);
  return (
    <Panel title="Where targets would land" level={3}>
      <p className="mb-3 max-w-measure text-sm">
        After aligning on a pair, the telescope is sent to targets all over the sky. In each
        direction the ring is the field of the eyepiece and the disc how far off the target is
        expected to land, to the same scale. A disc that covers its ring: not in the eyepiece.
        Looking up, east is on the left; stars mark the pair.
      </p>
      <ErrorMapLegend />
      <div className="mt-4 grid gap-6 sm:grid-cols-2">
        {chosen === null ? null : (
          <ErrorMapPicture
            title="Error map of the chosen pair"
            caption={`${same ? 'Your pair, which is the best' : 'Your pair'}: ${chosen.names.join(' and ')}`}
            stars={chosen.positions}
            telescope={sky.telescope}
            fieldRadiusArcmin={fieldArcmin}
          />
        )}
        {best === null || same ? null : (
          <ErrorMapPicture
            title="Error map of the best pair"
            caption={`The best pair: ${best.names.join(' and ')}`}
            stars={best.positions}
            telescope={sky.telescope}
            fieldRadiusArcmin={fieldArcmin}
          />
        )}
      </div>
    </Panel>
  );
}
