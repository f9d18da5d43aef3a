import { helpLevels } from '@/lib/mastery/sign-off';
import { kappaReading } from '@/lib/mastery/sign-off-agreement';
import type { AssessorAgreement } from '@/lib/mastery/sign-off-sheet';
import { footingOf } from '@/lib/measurement/small-class';

/** How far two assessors agree: counts, then the plain share, and κ beside it and never alone. */
export function AgreementText({ agreement }: { agreement: AssessorAgreement | null }) {
  if (agreement === null) {
    return (
      <p className="max-w-measure text-soft">
        When two of you note the same student, skill and evening, it says here how far you agree.
      </p>
    );
  }
  const { pairs, alike, table } = agreement;
  const footing = footingOf(pairs);
  const same = Math.round(alike * pairs);
  return (
    <div className="max-w-measure space-y-3">
      <p>
        Two of you looked at the same {pairs === 1 ? 'once' : `${String(pairs)} times`}:{' '}
        <strong>
          {same} of {pairs} with the same level
        </strong>
        {footing === 'counts-only' ? '. Fewer than ten: no share is made of that.' : null}
        {footing === 'counts-only' ? null : ` (${String(Math.round(alike * 100))} %).`}
      </p>
      {footing === 'counts-only' ? null : (
        <Kappa weighted={agreement.weighted} fewToTrust={footing === 'too-few-to-trust'} />
      )}
      <LevelTable table={table} />
    </div>
  );
}

function Kappa({ weighted, fewToTrust }: { weighted: number | null; fewToTrust: boolean }) {
  if (weighted === null) {
    return <p>κ cannot be told: both gave one level throughout, so chance alone would agree.</p>;
  }
  return (
    <div className={fewToTrust ? 'text-soft' : ''}>
      <p>
        κ = {(Math.round(weighted * 100) / 100).toFixed(2)}, “{kappaReading(weighted)}” in the words
        of Landis and Koch (1977)
        {fewToTrust ? '; fewer than thirty: too few to trust' : ''}.
      </p>
      <p className="text-sm">
        κ takes off what chance alone would give, and levels further apart weigh more. Where nearly
        everyone gets one level it is low however well you agree: read it beside the share. The
        words are a custom, not a pass mark.
      </p>
    </div>
  );
}

/** Where the two stood: off the diagonal they differ. */
function LevelTable({ table }: { table: AssessorAgreement['table'] }) {
  return (
    <table className="border-collapse text-center text-sm">
      <caption className="pb-1 text-start">
        Level of one of you by level of the other; the same level is framed
      </caption>
      <thead>
        <tr>
          <td />
          {helpLevels.map((level) => (
            <th key={level} scope="col" className="w-11 p-1">
              <span className="sr-only">the other </span>
              {level}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {helpLevels.map((level, row) => (
          <tr key={level}>
            <th scope="row" className="w-11 p-1">
              <span className="sr-only">one </span>
              {level}
            </th>
            {helpLevels.map((other, column) => (
              <td
                key={other}
                className={`number h-9 p-1 ${row === column ? 'border-2 border-strong font-semibold' : 'border border-line'}`}
              >
                {table[row]?.[column] ?? 0}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
