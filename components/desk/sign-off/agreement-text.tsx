import type { AssessorAgreement } from '@/lib/mastery/sign-off-sheet';

/** How far two assessors agree: the plain share first, κ beside it and never alone. */
export function AgreementText({ agreement }: { agreement: AssessorAgreement | null }) {
  if (agreement === null) {
    return (
      <p className="max-w-measure text-soft">
        When two of you note the same student, skill and evening, it says here how far you agree.
      </p>
    );
  }
  const { pairs, alike, weighted } = agreement;
  return (
    <div className="max-w-measure space-y-2">
      <p>
        In {pairs} {pairs === 1 ? 'case' : 'cases'} two of you looked at the same:{' '}
        <strong>{Math.round(alike * 100)} % with the same level</strong>
        {weighted === null
          ? '. κ says nothing here: both gave one level throughout, so that chance alone would agree.'
          : `, κ = ${weighted.toFixed(2)} (levels further apart weigh more).`}
      </p>
      <p className="text-sm text-soft">
        κ takes off what chance alone would give. Where nearly everyone gets one level it is low
        however well you agree, so read it beside the share.
        {pairs < 10 ? ' With fewer than ten cases, neither says much.' : ''}
      </p>
    </div>
  );
}
