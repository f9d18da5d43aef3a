import { outcomeInWords } from '@/components/lab/run/run-words';
import { Panel } from '@/components/ui/panel';
import type { RunResult } from '@/lib/grading/run-result';
import type { PairFigures } from '@/lib/grading/pair-result';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import { ErrorMapLegend, ErrorMapOfCells, ErrorMapPicture } from '../error-map-picture';
import { errorWordsFor, ofHundred } from '../pair/pair-result-words';
import type { DebriefSky } from './run-debrief-sky';
import { achievedInWords, judgementInWords, thirdInWords } from './run-result-words';

/** What the two stars made of the mount, what it was worth, and how that was judged. */
export function RunResultAlignment({ result, sky }: { result: RunResult; sky: DebriefSky }) {
  const { outcome, third, judgement } = result;
  const words = outcome && outcomeInWords(outcome, sky.scenario.telescope.computer);
  const worth = achievedInWords(result);
  return (
    <>
      <div className="keep-together grid gap-4 md:grid-cols-2 print:grid-cols-2">
        <Panel title="What the two stars said" level={3}>
          <div className="space-y-2">
            {words === null ? (
              <p>No two stars were confirmed, so there was no alignment.</p>
            ) : (
              <>
                <p className="font-semibold">{words.title}.</p>
                <p>{words.text}</p>
              </>
            )}
            {worth === null ? null : <p>{worth}</p>}
          </div>
        </Panel>
        <Panel title="The third star, and your judgement" level={3}>
          <div className="space-y-2">
            <p>
              {third === null
                ? 'You went to no third star. It is the only test that two stars cannot pass by luck.'
                : thirdInWords(third)}
            </p>
            <p>{judgement === null ? 'You gave no judgement.' : judgementInWords(judgement)}</p>
          </div>
        </Panel>
      </div>
      <PairWorth result={result} free={sky.proposals === null} />
      <Maps result={result} sky={sky} />
    </>
  );
}

const samePair = (a: PairFigures, b: PairFigures): boolean =>
  a.stars.every((hip) => b.stars.includes(hip));

function PairWorth({ result: { pair }, free }: { result: RunResult; free: boolean }) {
  const columns = [
    { title: 'The pair you meant', figures: pair.chosen },
    { title: 'The best the task allowed', figures: pair.best },
  ].filter((column): column is typeof column & { figures: PairFigures } => column.figures !== null);
  if (columns.length === 0) return null;
  const missInWords = errorWordsFor(...columns.map(({ figures }) => figures.expectedErrorArcmin));
  const rows: { head: string; cell: (figures: PairFigures) => string }[] = [
    { head: 'Apart on the sky', cell: ({ separationDeg }) => `${separationDeg.toFixed(1)}°` },
    {
      head: 'Expected miss',
      cell: ({ expectedErrorArcmin }) => missInWords(expectedErrorArcmin),
    },
    {
      head: 'Targets in the eyepiece',
      cell: ({ hitRate }) => `about ${ofHundred(hitRate)} of 100`,
    },
  ];
  return (
    <Panel title="What the pair is worth" level={3} className="keep-together">
      <p className="mb-3 max-w-measure text-sm">
        Expected of these two stars with this telescope and an ordinary hand, before anything is
        centred. {free ? null : 'The mount proposed the stars, so the choice was not all yours.'}
      </p>
      <div className="table-frame overflow-x-auto">
        <table>
          <caption className="sr-only">The pair that was meant beside the best</caption>
          <thead>
            <tr>
              <td />
              {columns.map(({ title, figures }) => (
                <th key={title} scope="col">
                  {title}
                  <span className="block font-normal">{figures.names.join(' and ')}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ head, cell }) => (
              <tr key={head}>
                <th scope="row">{head}</th>
                {columns.map(({ title, figures }) => (
                  <td key={title}>{cell(figures)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {pair.chosen !== null && pair.best !== null && samePair(pair.chosen, pair.best) ? (
        <p className="mt-2 text-sm">Yours is the best there was.</p>
      ) : null}
    </Panel>
  );
}

/** What was to be expected of the pair that was meant, beside what came of it. */
function Maps({ result, sky }: { result: RunResult; sky: DebriefSky }) {
  const { pair, achieved } = result;
  const { telescope, eyepiece } = sky.scenario;
  const fieldArcmin = fieldRadiusArcmin(telescope, eyepiece);
  if (pair.chosen === null && achieved.length === 0) return null;
  return (
    <Panel title="Where targets would land" level={3} className="keep-together">
      <p className="mb-3 max-w-measure text-sm">
        After the alignment the telescope is sent to targets all over the sky. In each direction the
        ring is the field of the observing eyepiece and the disc how far off the target lands, to
        the same scale. A disc that covers its ring: not in the eyepiece. Looking up, east is on the
        left; stars mark the two that were confirmed.
      </p>
      <ErrorMapLegend />
      <div className="mt-4 grid gap-6 sm:grid-cols-2 print:grid-cols-2">
        {pair.chosen === null ? null : (
          <ErrorMapPicture
            title="Expected error map"
            caption="Expected of this pair, with an ordinary hand"
            stars={pair.chosen.positions}
            telescope={telescope}
            fieldRadiusArcmin={fieldArcmin}
          />
        )}
        <ErrorMapOfCells
          title="Achieved error map"
          caption="Achieved: what you would find tonight"
          kind="achieved"
          stars={result.stars}
          cells={achieved}
          fieldRadiusArcmin={fieldArcmin}
        />
      </div>
    </Panel>
  );
}
