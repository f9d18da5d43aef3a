import { Fragment } from 'react';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { cardLines } from './card-words';

/** The card with place, date and time, as somebody wrote it: ruled, with a folded corner. */
export function CardPaper({ variant }: { variant: ClockAndPlaceVariant }) {
  return (
    <section
      aria-label="The card"
      className="relative w-full max-w-md border border-strong bg-page text-ink [clip-path:polygon(0_0,calc(100%-1.4rem)_0,100%_1.4rem,100%_100%,0_100%)]"
    >
      <span
        aria-hidden="true"
        className="absolute end-0 top-0 size-[1.4rem] border-s border-b border-strong bg-sunken"
      />
      <h3 className="border-b-2 border-accent px-3 pt-2 pb-1 pe-8 font-semibold">
        Card: {variant.card.placeName}
      </h3>
      <dl className="px-3 pb-1.5">
        {cardLines(variant).map(({ label, parts }) => (
          <div
            key={label}
            className="grid grid-cols-[6.2rem_minmax(0,1fr)] gap-x-3 border-b border-line py-1 leading-snug last:border-b-0"
          >
            <dt className="text-sm text-soft">{label}</dt>
            <dd className="font-semibold">
              {parts.map((part, index) => (
                <Fragment key={part ?? `washed out ${String(index)}`}>
                  {index > 0 ? ', ' : null}
                  {part ?? <WashedOut />}
                </Fragment>
              ))}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** Where dew ran over the ink. */
function WashedOut() {
  return (
    <span className="rounded-[45%_55%_60%_40%] border border-dashed border-strong bg-sunken px-2 font-normal text-soft italic">
      washed out
    </span>
  );
}
