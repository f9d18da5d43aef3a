'use client';

import { finderHand, type FinderProps } from './finder-hand';
import { aimsNow, inFinder, windowRadiusArcmin } from './finder-work';
import { RoundView, viewRadius } from './round-view';
import { ScrewKnob } from './screw-knob';

const unitsPerArcmin = viewRadius / windowRadiusArcmin;

/** The finder's window with its red dot, and the two screws that move the dot. */
export function FinderPane(props: FinderProps) {
  const { variant } = props;
  const { state } = finderHand(props);
  const seen = aimsNow(variant, state).flatMap((aim) => {
    const at = inFinder(variant, state, aim);
    return at === null ? [] : [{ aim, at }];
  });
  const x = state.dot.rightArcmin * unitsPerArcmin;
  const y = -state.dot.upArcmin * unitsPerArcmin;
  return (
    <section aria-label="Finder" className="flex min-w-0 flex-col gap-2 p-1 sm:p-2">
      <p className="text-center text-sm leading-snug">
        <strong className="font-semibold">Finder</strong>
        <span className="block text-xs text-on-sky-soft">Upright; ring: the dot</span>
      </p>
      <div className="mx-auto w-full max-w-[min(20rem,35cqh)] min-w-0">
        <RoundView
          name="finder"
          variant={variant}
          radiusArcmin={windowRadiusArcmin}
          orientation="true"
          capped={state.capsOn}
          dusk={state.dusk}
          seen={seen}
        >
          {state.capsOn ? null : (
            <g transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}>
              <circle r="7" fill="none" stroke="var(--sky-lamp)" strokeWidth="1" />
              <circle r="1.7" fill="var(--sky-lamp)" stroke="var(--land-near)" strokeWidth="0.5" />
            </g>
          )}
        </RoundView>
      </div>
      <div className="flex justify-center gap-4">
        <ScrewKnob {...props} screw={0} />
        <ScrewKnob {...props} screw={1} />
      </div>
    </section>
  );
}
