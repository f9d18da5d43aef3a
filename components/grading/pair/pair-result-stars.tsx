import { positionInWords } from '@/components/sky/position-words';
import { Panel } from '@/components/ui/panel';
import type { PairStarResult } from '@/lib/grading/pair-result';
import { cautionInWords, reasonInWords } from './pair-result-words';

/** For each star: may it serve, why not, and what could be taken for it. */
export function PairResultStars({
  stars,
  givenHip,
}: {
  stars: readonly PairStarResult[];
  /** The star that the task gave: nothing was asked about it. */
  givenHip: number | null;
}) {
  if (stars.length === 0) return null;
  return (
    <div className="grid gap-4 md:grid-cols-2">
      {stars.map((star) => (
        <Panel key={star.hip} title={star.name} level={3}>
          <p className="text-sm text-soft">
            {star.hip === givenHip ? 'Given by the task; ' : ''}
            {positionInWords(star.azimuthDeg, star.altitudeDeg)}{' '}
            <span className="font-figures">
              (azimuth {star.azimuthDeg.toFixed(1)}°, altitude {star.altitudeDeg.toFixed(1)}°)
            </span>
          </p>
          {star.usable ? (
            <p className="mt-2 font-semibold text-good">It may serve as an alignment star.</p>
          ) : (
            <>
              <p className="mt-2 font-semibold text-danger">It may not serve:</p>
              <ul className="list-disc space-y-1 ps-5">
                {star.reasons.map((reason) => (
                  <li key={reason.code}>{reasonInWords(reason)}</li>
                ))}
              </ul>
            </>
          )}
          <LookAlikes star={star} asked={star.hip !== givenHip} />
        </Panel>
      ))}
    </div>
  );
}

function lookAlikeInWords(star: PairStarResult, asked: boolean): string {
  if (star.cautions.length === 0) {
    return star.lookAlike === null
      ? 'Nothing near it could be mistaken for it.'
      : 'What you named could not be mistaken for it: it is too faint beside it, or too far away.';
  }
  if (!asked) return 'This could be mistaken for it:';
  if (star.cautionNamed) return 'You named what could be mistaken for it:';
  return star.lookAlike === null
    ? 'Something could be mistaken for it that you did not name:'
    : 'You named another light; this could be mistaken for it:';
}

function LookAlikes({ star, asked }: { star: PairStarResult; asked: boolean }) {
  return (
    <div className="mt-2 text-sm">
      <p>{lookAlikeInWords(star, asked)}</p>
      {star.cautions.length === 0 ? null : (
        <ul className="list-disc ps-5">
          {star.cautions.slice(0, 3).map((caution) => (
            <li key={caution.neighbour}>{cautionInWords(caution)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
