import type { LevelResult } from '@/lib/grading/bench/level/level-result';
import { startOf, type TripodSite, type TripodState } from '@/lib/levelling/tripod';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { bubbleInWords, readsFromMark, tiltInWords } from './level-words';
import { TripodFigure, tripodViewBox } from './tripod-figure';
import { VialFigure } from './vial-figure';

/** The stand as the result tells of it: every foot has gone in under the tube. */
function leftState(site: TripodSite, { legsMm, armTurned, moves }: LevelResult): TripodState {
  const [a, b, c] = legsMm.map((lengthMm) => ({ lengthMm, open: false, sunk: true, slid: false }));
  const start = startOf(site);
  if (a === undefined || b === undefined || c === undefined)
    throw new Error('a tripod has three legs');
  return { ...start, legs: [a, b, c], armTurned, tubeOn: true, moves };
}

/** As it was found, and as it was left. */
export function LevelResultPicture({
  variant,
  result,
}: {
  variant: LevelVariant;
  result: LevelResult;
}) {
  const stands = [
    { name: 'As it was found', state: startOf(variant.site) },
    { name: 'As you left it', state: leftState(variant.site, result) },
  ];
  return (
    <div className="grid gap-4 md:grid-cols-2">
      {stands.map(({ name, state }) => (
        <figure key={name} className="keep-together">
          <div className="on-sky flex items-center gap-2 overflow-hidden rounded-b-lg border-t-2 border-strong bg-sky p-3">
            <svg
              viewBox={tripodViewBox}
              aria-hidden="true"
              className="block h-64 min-w-0 flex-1 overflow-visible"
            >
              <TripodFigure variant={variant} state={state} showsMark={readsFromMark(variant)} />
            </svg>
            <VialFigure
              variant={variant}
              state={state}
              className="relative aspect-square w-2/5 shrink-0"
            />
          </div>
          <figcaption className="mt-2 text-sm text-soft">
            {name}: {tiltInWords(variant.site, state)}; bubble {bubbleInWords(variant, state)}.
          </figcaption>
        </figure>
      ))}
    </div>
  );
}
