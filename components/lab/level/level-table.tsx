'use client';

import { Button } from '@/components/ui/button';
import { legIndices, vialNow, type LegIndex } from '@/lib/levelling/tripod';
import { wrap360 } from '@/lib/units/angle';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { LegLength } from './leg-length';
import { bubbleInWords, legName, readsFromMark } from './level-words';
import { StandControls } from './stand-controls';
import { useTripodHand, type LevelViewProps, type TripodHand } from './use-tripod-hand';

/** The same tripod in words and numbers. */
export function LevelTable(props: LevelViewProps) {
  const { variant } = props;
  const hand = useTripodHand(props);
  return (
    <div className="max-w-3xl space-y-6">
      <section aria-labelledby="bubble-heading" className="space-y-1">
        <h3 id="bubble-heading" className="font-semibold">
          The bubble
        </h3>
        <p className="border-s-4 border-accent ps-3">It is {bubbleInWords(variant, hand.state)}.</p>
        <p className="text-sm text-soft">{howToRead(variant, hand)}</p>
      </section>
      <div className="grid gap-4 sm:grid-cols-3">
        {legIndices.map((leg) => (
          <OneLeg key={leg} leg={leg} variant={variant} hand={hand} />
        ))}
      </div>
      <StandControls {...hand} armTurns={variant.site.armTurns} />
    </div>
  );
}

function howToRead(variant: LevelVariant, { state }: TripodHand): string {
  const { site } = variant;
  const scale =
    '2 mm of bubble are one degree; the ring runs 3.5 mm from the middle. The bubble goes to the high side.';
  const legs = 'Seen from above, leg B stands 120° clockwise from leg A and leg C 240°.';
  const markDeg = Math.round(
    wrap360(vialNow(site, state).markAzimuthDeg - site.legs[0].azimuthDeg),
  );
  return readsFromMark(variant)
    ? `${scale} ${legs} The vial is turned: its mark points ${String(markDeg)}° clockwise from leg A.`
    : `${scale} ${legs}`;
}

function OneLeg({
  leg,
  variant,
  hand,
}: {
  leg: LegIndex;
  variant: LevelVariant;
  hand: TripodHand;
}) {
  const { site } = variant;
  const { state, act } = hand;
  const { lengthMm, open } = state.legs[leg];
  const atEnd =
    lengthMm === site.legMaxMm ? ', fully out' : lengthMm === site.legMinMm ? ', fully in' : '';
  return (
    <section
      aria-labelledby={`leg-${legName(leg)}`}
      className="space-y-3 rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-3"
    >
      <h3 id={`leg-${legName(leg)}`} className="font-semibold">
        Leg {legName(leg)}
      </h3>
      <p className="text-sm">
        {lengthMm} mm{atEnd}, {open ? 'open' : 'locked'};{' '}
        {site.legs[leg].sinksMm > 0 ? 'its foot on soft ground' : 'its foot on firm ground'}
      </p>
      <div className="flex flex-wrap gap-2">
        <Button
          onClick={() => {
            act({ do: open ? 'lock' : 'open', leg });
          }}
        >
          {open ? 'Lock' : 'Open'} leg {legName(leg)}
        </Button>
        <Button
          onClick={() => {
            act({ do: 'tread-in', leg });
          }}
        >
          Tread in foot {legName(leg)}
        </Button>
      </div>
      {open ? (
        <LegLength
          label={`Length of leg ${legName(leg)}`}
          valueMm={lengthMm}
          onSet={(toMm) => {
            act({ do: 'slide', leg, toMm });
          }}
        />
      ) : null}
    </section>
  );
}
