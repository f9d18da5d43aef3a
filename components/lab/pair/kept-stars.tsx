'use client';

import { positionInWords } from '@/components/sky/position-words';
import { Button } from '@/components/ui/button';
import { ordinalOf } from './pair-words';
import type { PairLabModel } from './use-pair-lab';

/** The two places for stars: empty, or with a name and a way to put the star back. */
export function KeptStars({ lab }: { lab: PairLabModel }) {
  const { picks } = lab.choice.draft;
  return (
    <ol className="divide-y divide-line border-y border-line">
      {[0, 1].map((index) => {
        const pick = picks[index];
        const given = pick !== undefined && pick.hip === lab.sky.givenHip;
        const place = pick === undefined ? null : lab.placeOf(`hip-${pick.hip}`);
        return (
          <li key={index} className="flex min-h-11 items-center gap-3 py-1.5">
            <span
              aria-hidden="true"
              className="grid size-7 shrink-0 place-items-center rounded-full border-2 border-strong font-figures text-sm font-semibold"
            >
              {index + 1}
            </span>
            {pick === undefined ? (
              <span className="text-soft">No {ordinalOf(index)} star yet</span>
            ) : (
              <>
                <span className="min-w-0 flex-1 leading-tight">
                  <span className="font-semibold">{lab.nameOf(`hip-${pick.hip}`)}</span>
                  {given ? <span className="text-soft"> (given)</span> : null}
                  {place === null ? null : (
                    <span className="block text-sm text-soft">
                      {positionInWords(place.azimuthDeg, place.altitudeDeg)}
                    </span>
                  )}
                </span>
                {given ? null : (
                  <Button
                    variant="plain"
                    aria-label={`Replace ${lab.nameOf(`hip-${pick.hip}`)}`}
                    onClick={() => {
                      lab.drop(pick.hip);
                    }}
                  >
                    Replace
                  </Button>
                )}
              </>
            )}
          </li>
        );
      })}
    </ol>
  );
}
