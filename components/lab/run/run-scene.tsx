'use client';

import { Aperture, CircleDot, Eye, MoveLeft } from 'lucide-react';
import dynamic from 'next/dynamic';
import { useState } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import { FieldView } from './field-view';
import type { RunModel } from './run-model';
import { angleInWords, wayRoundInWords } from './run-words';
import { finderRadiusDeg } from './run-sky-lists';
import { SceneToggle } from './scene-toggle';
import { nextView, shortly, towardsView, viewAtStage, type SceneView } from './scene-view';
import { StartBench } from './start-bench';
import type { StartChoice } from './start-choice';
import { useSteeringKeys } from './steering-keys';
import { usePlacedSky } from './use-placed-sky';
import { useRunSnapshot } from './use-run-lab';

// The renderer is the heaviest part of the lab: it comes after the page, and not at all to the table.
const EyeView = dynamic(() => import('./eye-view').then((module) => module.EyeView), {
  ssr: false,
  loading: () => (
    <div className="on-sky grid size-full place-items-center">
      <p role="status">The sky is being drawn …</p>
    </div>
  ),
});

const icons = { bench: MoveLeft, eye: Eye, finder: CircleDot, eyepiece: Aperture } as const;

type RunSceneProps = {
  model: RunModel;
  start: StartChoice;
  /** Once more, before the first star. */
  settingAgain: boolean;
  picked: SkyLight | null;
  onPick: (light: SkyLight | null) => void;
  /** Whether the strips move the tube now. */
  steering: boolean;
  speed: number;
  onSpeed: (speed: number) => void;
  figuresOffered: boolean;
  onLost: () => void;
};

/** Eye, finder and eyepiece, with the one large button that leads from each to the next. */
export function RunScene(props: RunSceneProps) {
  const { model, start, steering, onLost } = props;
  const { stage: reached } = useRunSnapshot(model);
  const stage = props.settingAgain ? 'start-position' : reached;
  const placed = usePlacedSky(model);
  const [wanted, setWanted] = useState<SceneView>('bench');
  const [showRing, setShowRing] = useState(true);
  const view = viewAtStage(wanted, stage);
  const next = nextView(view, stage);
  const keys = useSteeringKeys(model, props.speed, props.onSpeed, steering);
  const Icon = icons[next];
  return (
    <div className="on-sky relative size-full" {...keys}>
      {view === 'bench' ? <StartBench start={start} tubeType={model.variant.kit.tubeType} /> : null}
      {view === 'eye' ? (
        <EyeView
          model={model}
          placed={placed}
          aim={stage === 'start-position' ? start.aim : model.pose}
          picked={props.picked}
          onPick={props.onPick}
          settingStart={stage === 'start-position'}
          figuresOffered={props.figuresOffered}
          steering={steering}
          onLost={onLost}
        />
      ) : null}
      {view === 'finder' || view === 'eyepiece' ? (
        <RoundView model={model} kind={view} showRing={showRing} onLost={onLost} />
      ) : null}
      {view === 'eyepiece' ? (
        <div className="absolute start-3 top-11">
          <SceneToggle
            pressed={showRing}
            onPress={() => {
              setShowRing(!showRing);
            }}
            label="Middle ring"
          />
        </div>
      ) : null}
      <button
        type="button"
        onClick={() => {
          setWanted(next);
        }}
        aria-label={towardsView[next]}
        className="absolute start-3 bottom-16 flex min-h-14 items-center gap-3 rounded-md border border-sky-line bg-land-near/85 ps-4 pe-5 text-base font-semibold text-on-sky hover:border-sky-lamp hover:text-sky-lamp lg:bottom-3"
      >
        <Icon aria-hidden="true" className="size-6 shrink-0" />
        <span className="lg:hidden">{shortly[next]}</span>
        <span className="hidden lg:inline">{towardsView[next]}</span>
      </button>
    </div>
  );
}

type RoundViewProps = {
  model: RunModel;
  kind: 'finder' | 'eyepiece';
  showRing: boolean;
  onLost: () => void;
};

/** A round view takes the focus, so that the keys steer what is seen in it. */
function RoundView({ model, kind, showRing, onLost }: RoundViewProps) {
  const name = kind === 'finder' ? 'The finder' : 'The eyepiece';
  const across =
    kind === 'finder'
      ? `${String(2 * finderRadiusDeg)}°`
      : angleInWords(2 * model.lists.eyepieceRadiusArcmin);
  const wayRound = wayRoundInWords(kind, model.variant.kit);
  return (
    <>
      {/* A view that one steers is an application of its own: it takes the arrow keys. */}
      <div
        role="application"
        aria-roledescription={kind}
        aria-label={`${name}, ${across} across. ${wayRound}. Arrow keys steer the tube, 1 to 5 set the speed. The table does the same without a picture.`}
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- see above
        tabIndex={0}
        className="group absolute inset-0 touch-none p-2 pt-9 pb-14 select-none focus-visible:outline-none lg:p-4"
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
        className="pointer-events-none absolute start-3 top-3 rounded-sm bg-land-near/70 px-2 py-0.5 font-figures text-sm text-on-sky"
      >
        {name}, {across} across
      </p>
      <p
        aria-hidden="true"
        className="pointer-events-none absolute end-3 bottom-16 max-w-[55%] rounded-sm bg-land-near/70 px-2 py-0.5 text-end text-sm text-on-sky lg:bottom-3"
      >
        {wayRound}
        <span className="hidden lg:inline">; arrow keys steer, 1–5 set the speed</span>
      </p>
    </>
  );
}
