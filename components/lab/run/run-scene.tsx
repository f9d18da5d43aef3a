'use client';

import { Aperture, CircleDot, Eye, MoveLeft } from 'lucide-react';
import dynamic from 'next/dynamic';
import { useState } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import { RoundView } from './round-view';
import type { RunModel } from './run-model';
import { wayRoundInWords } from './run-words';
import { SceneToggle } from './scene-toggle';
import { nextView, shortly, towardsView, viewAtStage, type SceneView } from './scene-view';
import { SideSwitch, type BenchSide } from './side-switch';
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
  const [side, setSide] = useState<BenchSide>('above');
  const view = viewAtStage(wanted, stage);
  const next = nextView(view, stage);
  const keys = useSteeringKeys(model, props.speed, props.onSpeed, steering);
  const Icon = icons[next];
  const round = view === 'finder' || view === 'eyepiece';
  return (
    <div className="on-sky relative flex size-full flex-col" {...keys}>
      <div className="relative min-h-0 flex-1">
        {view === 'bench' ? (
          <StartBench start={start} tubeType={model.variant.kit.tubeType} shown={side} />
        ) : null}
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
        {round ? <RoundView model={model} kind={view} showRing={showRing} onLost={onLost} /> : null}
      </div>
      {/* Over the sky there is room; below a drawing or a round view it has a place of its own. */}
      <div
        className={`flex items-center gap-3 lg:flex-col-reverse lg:items-start ${view === 'eye' ? 'absolute start-3 bottom-3' : 'p-2 lg:absolute lg:start-3 lg:bottom-3 lg:p-0'}`}
      >
        <button
          type="button"
          onClick={() => {
            setWanted(next);
          }}
          aria-label={towardsView[next]}
          className="flex min-h-14 shrink-0 items-center gap-2 rounded-md border border-sky-line bg-land-near/85 ps-3 pe-4 text-base font-semibold text-on-sky hover:border-sky-lamp hover:text-sky-lamp"
        >
          <Icon aria-hidden="true" className="size-6 shrink-0" />
          <span className="lg:hidden">{shortly[next]}</span>
          <span className="hidden lg:inline">{towardsView[next]}</span>
        </button>
        {view === 'bench' ? <SideSwitch side={side} onChange={setSide} /> : null}
        {view === 'eyepiece' ? (
          <SceneToggle
            pressed={showRing}
            onPress={() => {
              setShowRing(!showRing);
            }}
            label="Middle ring"
          />
        ) : null}
        {round ? (
          <p aria-hidden="true" className="text-xs leading-tight lg:hidden">
            {wayRoundInWords(view, model.variant.kit)}
          </p>
        ) : null}
      </div>
    </div>
  );
}
