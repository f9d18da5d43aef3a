'use client';

import { PairLab } from '@/components/lab/pair/pair-lab';
import type { PairLabSky } from '@/components/lab/pair/pair-lab-sky';
import type { SubmitPair } from '@/components/lab/pair/pair-lab-props';
import { LinkButton } from '@/components/ui/link-button';
import { emptyPairDraft } from '@/lib/grading/pair-submission';

type VisitorRoundProps = {
  sky: PairLabSky;
  /** The round's address: the same round, the same draft. */
  address: string;
  nextAddress: string;
  setUpAddress: string;
  onSubmit: SubmitPair;
};

/** A visitor's practice. What has been picked is kept by this tab alone. */
export function VisitorRound({
  sky,
  address,
  nextAddress,
  setUpAddress,
  onSubmit,
}: VisitorRoundProps) {
  return (
    <PairLab
      key={address}
      sky={sky}
      mode="practice"
      attemptKey={address}
      draft={emptyPairDraft}
      onSubmit={onSubmit}
      afterwards={
        <>
          <LinkButton href={nextAddress} variant="primary" size="large">
            Another sky
          </LinkButton>
          <LinkButton href={setUpAddress} size="large">
            Other place, time or telescope
          </LinkButton>
        </>
      }
    />
  );
}
