'use client';

import { positionInWords } from '@/components/sky/position-words';
import { FistDrawing } from './fist-drawing';
import { letterIn } from './letter-in';
import { LightCard } from './light-card';
import type { PairLabModel } from './use-pair-lab';

/** The star the mount proposes; taking it or asking for another stands with what is done next. */
export function ProposalStep({ lab, inTable }: { lab: PairLabModel; inTable: boolean }) {
  const { proposalHip } = lab;
  if (proposalHip === null) {
    return (
      <section aria-label="The mount's proposal" className="space-y-3">
        <p className="rounded-md bg-sunken p-3">
          The mount has no further star to propose. Start again with its first one, or say that
          tonight has no good pair.
        </p>
      </section>
    );
  }
  const id = `hip-${proposalHip}` as const;
  const light = lab.lightOf(id);
  const place = lab.placeOf(id);
  return (
    <section aria-label="The mount's proposal" className="space-y-3">
      <p className="font-semibold">The mount points here:</p>
      {light === null ? (
        place === null ? null : (
          <div className="space-y-2">
            <FistDrawing {...place} />
            <p>
              <span className="font-semibold">
                {positionInWords(place.azimuthDeg, place.altitudeDeg)}.
              </span>{' '}
              The eye sees no star there.
            </p>
          </div>
        )
      ) : (
        <LightCard light={light} letter={inTable ? letterIn(lab, id) : null} />
      )}
    </section>
  );
}
