'use client';

import { angleInWords } from '@/components/sky/angle-words';
import { FieldView } from './field-view';
import type { RunModel } from './run-model';
import { finderRadiusDeg } from './run-sky-lists';
import { wayRoundInWords } from './run-words';

type RoundViewProps = {
  model: RunModel;
  kind: 'finder' | 'eyepiece';
  showRing: boolean;
  onLost: () => void;
};

/**
 * A round view takes the focus, so that the keys steer what is seen in it. What is said of it stands
 * above and below the circle on a phone, in the free corners on a wide screen: nothing lies on the rim.
 */
export function RoundView({ model, kind, showRing, onLost }: RoundViewProps) {
  const name = kind === 'finder' ? 'The finder' : 'The eyepiece';
  const across =
    kind === 'finder'
      ? `${String(2 * finderRadiusDeg)}°`
      : angleInWords(2 * model.lists.eyepieceRadiusArcmin);
  const wayRound = wayRoundInWords(kind, model.variant.kit);
  return (
    <div className="flex size-full flex-col lg:block">
      <p
        aria-hidden="true"
        className="pointer-events-none px-3 py-1 font-figures text-sm text-on-sky lg:absolute lg:start-3 lg:top-3 lg:z-10 lg:p-0"
      >
        {name}, {across} across
      </p>
      {/* A view that one steers is an application of its own: it takes the arrow keys. */}
      <div
        role="application"
        aria-roledescription={kind}
        aria-label={`${name}, ${across} across. ${wayRound}. Arrow keys steer the tube, 1 to 5 set the speed. The table does the same without a picture.`}
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- see above
        tabIndex={0}
        className="group relative min-h-0 flex-1 touch-none px-2 select-none focus-visible:outline-none lg:absolute lg:inset-0 lg:p-4"
      >
        <FieldView model={model} kind={kind} showRing={showRing} onLost={onLost} />
        <div
          aria-hidden="true"
          className="pointer-events-none absolute inset-0 hidden bg-[#ff5a30] mix-blend-multiply [html[data-theme=after-dark]_&]:block"
        />
        <div
          aria-hidden="true"
          className="pointer-events-none absolute inset-0 hidden border-[3px] border-sky-lamp group-focus-visible:block"
        />
      </div>
      <p
        aria-hidden="true"
        className="pointer-events-none absolute end-3 bottom-3 hidden max-w-48 text-end text-sm leading-snug text-on-sky lg:block"
      >
        {wayRound}. Arrow keys steer, 1–5 set the speed.
      </p>
    </div>
  );
}
