'use client';

import { Button } from '@/components/ui/button';
import { LightCard } from './light-card';
import { ordinalOf, planetIsNoStar } from './pair-words';
import { letterIn } from './letter-in';
import type { PairLabModel } from './use-pair-lab';

/** The light being looked at, and the button that keeps it. */
export function PickStep({ lab, inTable }: { lab: PairLabModel; inTable: boolean }) {
  const ordinal = ordinalOf(lab.choice.draft.picks.length);
  const { selected } = lab;
  if (selected === null) {
    return (
      <p className="rounded-md bg-sunken p-3">
        {inTable
          ? `Choose a light in the table to see where it stands, then keep it as your ${ordinal} star.`
          : `Pick a light in the sky to see where it stands, then keep it as your ${ordinal} star.`}
      </p>
    );
  }
  const kept = lab.choice.draft.picks.some((pick) => `hip-${pick.hip}` === selected.id);
  return (
    <section aria-label="The light you picked" className="space-y-3">
      <LightCard light={selected} letter={inTable ? letterIn(lab, selected.id) : null} />
      {selected.star === null ? (
        <p className="rounded-md bg-sunken p-3">{planetIsNoStar}</p>
      ) : kept ? (
        <p className="rounded-md bg-sunken p-3">You have already kept this one.</p>
      ) : (
        <Button variant="primary" size="large" className="w-full" onClick={lab.keepSelected}>
          Keep as {ordinal} star
        </Button>
      )}
    </section>
  );
}
