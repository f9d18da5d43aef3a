import { positionInWords } from '@/components/sky/position-words';
import { Panel } from '@/components/ui/panel';
import type { PairStarResult } from '@/lib/grading/pair-submission';
import { cautionInWords, reasonInWords } from './pair-result-words';

/** For each star: may it serve, why not, and what could be taken for it. */
export function PairResultStars({ stars }: { stars: readonly PairStarResult[] }) {
  if (stars.length === 0) return null;
  return (
    <div className="grid gap-4 md:grid-cols-2">
      {stars.map((star) => (
        <Panel key={star.hip} title={star.name} level={3}>
          <p className="text-sm text-soft">
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
          <LookAlikes star={star} />
        </Panel>
      ))}
    </div>
  );
}

function LookAlikes({ star }: { star: PairStarResult }) {
  const [first] = star.cautions;
  if (first === undefined) {
    return (
      <p className="mt-2 text-sm">
        {star.lookAlike === null
          ? 'Nothing near it could be mistaken for it, as you said.'
          : 'What you named could not be mistaken for it: it is too faint beside it, or too far away.'}
      </p>
    );
  }
  return (
    <div className="mt-2 text-sm">
      <p>
        {star.cautionNamed
          ? 'You named what could be mistaken for it:'
          : star.lookAlike === null
            ? 'Something could be mistaken for it that you did not name:'
            : 'You named another light; this could be mistaken for it:'}
      </p>
      <ul className="list-disc ps-5">
        {star.cautions.slice(0, 3).map((caution) => (
          <li key={caution.neighbour}>{cautionInWords(caution)}</li>
        ))}
      </ul>
    </div>
  );
}
