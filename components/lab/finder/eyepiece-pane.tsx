'use client';

import { wayRoundInWords } from '../run/run-words';
import { EyepieceControls } from './eyepiece-controls';
import { finderHand, type FinderProps } from './finder-hand';
import { aimsNow, inEyepiece } from './finder-work';
import { eyepieceName } from './finder-words';
import { RoundView, viewRadius } from './round-view';

/** The eyepiece, with what moves the tube a little. */
export function EyepiecePane(props: FinderProps) {
  const { variant } = props;
  const { state } = finderHand(props);
  const { orientation, kitName } = variant;
  const { radiusArcmin } = variant.eyepieces[state.eyepiece];
  const seen = aimsNow(variant, state).flatMap((aim) => {
    // Wide things reach into the view from beyond its edge.
    const at = inEyepiece(variant, state, aim, 90);
    return at === null ? [] : [{ aim, at }];
  });
  return (
    <section aria-label="Eyepiece" className="flex min-w-0 flex-col gap-2 p-1 sm:p-2">
      <p className="text-center text-sm leading-snug">
        <strong className="font-semibold">Eyepiece {eyepieceName(variant, state.eyepiece)}</strong>
        <span className="block text-xs text-on-sky-soft">
          {wayRoundInWords('eyepiece', { name: kitName, orientation })}
        </span>
      </p>
      <div className="mx-auto w-full max-w-[min(20rem,35cqh)] min-w-0">
        <RoundView
          name="eyepiece"
          variant={variant}
          radiusArcmin={radiusArcmin}
          orientation={orientation}
          capped={state.capsOn}
          dusk={state.dusk}
          seen={seen}
        >
          {state.capsOn ? null : (
            <path
              d={`M-${String(viewRadius)} 0 H-9 M9 0 H${String(viewRadius)} M0 -${String(viewRadius)} V-9 M0 9 V${String(viewRadius)}`}
              stroke="var(--on-sky)"
              strokeWidth="0.8"
              strokeOpacity="0.7"
            />
          )}
        </RoundView>
      </div>
      <EyepieceControls {...props} />
    </section>
  );
}
