'use client';

import { PlanInset } from './plan-inset';
import { readsFromMark } from './level-words';
import { StandControls } from './stand-controls';
import { TripodFigure, tripodViewBox } from './tripod-figure';
import { TripodHandles } from './tripod-handles';
import { useTripodHand, type LevelViewProps } from './use-tripod-hand';
import { VialFigure } from './vial-figure';

/** The tripod to take hold of, and the vial large beside it. */
export function LevelDrawing(props: LevelViewProps) {
  const { variant } = props;
  const hand = useTripodHand(props);
  const byMark = readsFromMark(variant);
  return (
    <div className="on-sky flex size-full flex-col bg-sky">
      <div className="flex min-h-0 flex-1 flex-col-reverse overflow-hidden select-none sm:flex-row">
        <svg
          viewBox={tripodViewBox}
          role="group"
          aria-label="The tripod, seen from a little above"
          className="block min-h-0 w-full flex-[5] overflow-visible sm:h-full sm:w-auto sm:min-w-0"
        >
          <TripodFigure variant={variant} state={hand.state} showsMark={byMark} />
          <TripodHandles variant={variant} hand={hand} />
        </svg>
        <div className="relative flex min-h-0 flex-[3] items-center justify-center gap-2 p-2 sm:flex-col">
          <VialFigure
            variant={variant}
            state={hand.state}
            className="aspect-square h-full max-h-[26rem] min-h-0 sm:h-auto sm:w-full sm:max-w-[26rem]"
          />
          {byMark ? <PlanInset variant={variant} state={hand.state} /> : null}
        </div>
      </div>
      <div className="relative border-t border-(--sky-line) bg-page p-3 text-ink">
        <StandControls {...hand} armTurns={variant.site.armTurns} />
      </div>
    </div>
  );
}
