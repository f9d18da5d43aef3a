'use client';

import { LightCard } from './light-card';
import { ordinalOf, planetIsNoStar } from './pair-words';
import { letterIn } from './letter-in';
import { isKept } from './pair-control';
import type { PairLabModel } from './use-pair-lab';

/** The light being looked at; the button that keeps it stands with what is done next. */
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
  return (
    <section aria-label="The light you picked" className="space-y-3">
      <LightCard light={selected} letter={inTable ? letterIn(lab, selected.id) : null} />
      {selected.star === null ? (
        <p className="rounded-md bg-sunken p-3">{planetIsNoStar}</p>
      ) : isKept(lab) ? (
        <p className="rounded-md bg-sunken p-3">You have already kept this one.</p>
      ) : null}
    </section>
  );
}
