'use client';

import dynamic from 'next/dynamic';
import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { SkyLight } from '@/components/sky/sky-lights';
import { webglAvailable } from '@/components/sky/webgl-available';
import type { RunStage } from '@/lib/alignment/run-state';
import { ChooseControl } from '../run/choose-control';
import { HandControl } from '../run/hand-control';
import { JudgeControl } from '../run/judge-control';
import type { RunLabVariant } from '../run/run-lab-variant';
import { RunModel } from '../run/run-model';
import { RunPanel } from '../run/run-panel';
import { RunScene } from '../run/run-scene';
import { stageTitles } from '../run/run-words';
import { useStartChoice } from '../run/start-choice';
import { useRunSnapshot, useRunTime } from '../run/use-run-lab';
import type { Evening } from './evening';
import { PlannedPair } from './planned-pair';
import { StageFrame } from './stage-frame';

const RunTable = dynamic(() => import('../run/run-table').then((module) => module.RunTable), {
  loading: () => (
    <p role="status" className="p-4">
      The table is being laid out …
    </p>
  ),
});

const noWebgl =
  'This browser cannot draw the sky, so the table is open instead: it asks the same and counts the same.';
const steeringStages: readonly RunStage[] = ['centre-first', 'centre-second', 'check-third'];
const choosingStages: readonly RunStage[] = ['choose-first', 'choose-second'];

type SteeredRunProps = {
  evening: Evening;
  variant: RunLabVariant;
  stage: 'alignment-run' | 'check-on-a-third';
};

/** The alignment run's own scene, table, panel and hand control, within the evening. */
export function SteeredRun({ evening, variant, stage: at }: SteeredRunProps) {
  const { catalogue, draft, work } = evening;
  const [model] = useState(
    () =>
      new RunModel({
        variant,
        catalogue,
        log: draft.log,
        // Nothing of an evening is handed in from here, so the run speaks as in practice.
        mode: 'practice',
        onLog: (log) => {
          // Who sets the start once more from the run's table locks the clutches with it.
          const again = log.at(-1)?.do === 'set-start';
          work('alignment-run', { log: [...log], ...(again ? { clutchesLocked: true } : {}) });
        },
      }),
  );
  useRunTime(model);
  const { stage, said, targetHip } = useRunSnapshot(model);
  const start = useStartChoice(variant.setup.declinationDeg);
  const [drawable, setDrawable] = useState(webglAvailable);
  const inTable = !drawable || evening.view === 'table';
  const [picked, setPicked] = useState<SkyLight | null>(null);
  const [speed, setSpeed] = useState(3);
  const [judgement, setJudgement] = useState<boolean | null>(null);
  /** Reading it once more costs no time. */
  const judge = (trust: boolean | null): void => {
    setJudgement(trust);
    if (trust !== null) evening.onSheetOpen(true);
    model.holdSky(trust !== null, 'review');
  };
  const steering = steeringStages.includes(stage) && judgement === null;
  const checkTooEarly =
    at === 'check-on-a-third' && !['result', 'check-third', 'judged'].includes(stage);
  return (
    <StageFrame
      evening={evening}
      viewLabel="How to do the run"
      drawingName="Telescope"
      drawable={drawable}
      status={said}
      notice={drawable ? null : <p className="bg-caution-soft px-4 py-2 text-sm">{noWebgl}</p>}
      scene={
        inTable ? (
          <div className="size-full overflow-y-auto">
            <RunTable model={model} />
          </div>
        ) : (
          <RunScene
            model={model}
            start={start}
            settingAgain={false}
            picked={picked}
            onPick={setPicked}
            steering={steering}
            speed={speed}
            onSpeed={(next) => {
              setSpeed(next);
              model.tell(`Speed ${String(next)} of 5.`);
            }}
            figuresOffered={evening.mode === 'practice'}
            onLost={() => {
              setDrawable(false);
            }}
          />
        )
      }
      controls={
        steering ? (
          <HandControl model={model} inTable={inTable} onJudge={judge} />
        ) : choosingStages.includes(stage) ? (
          <ChooseControl key={stage} model={model} />
        ) : stage === 'result' && judgement === null ? (
          <JudgeControl model={model} onJudge={judge} />
        ) : undefined
      }
      summary={
        steering && targetHip !== null
          ? `${stageTitles[stage]}: ${model.nameOf(targetHip)}`
          : stageTitles[judgement === null ? stage : 'judged']
      }
      panel={
        <>
          {checkTooEarly ? (
            <p className="mb-3 border-s-4 border-accent ps-3">
              A third star is checked once two are confirmed.
            </p>
          ) : null}
          <PlannedPair evening={evening} />
          <RunPanel
            model={model}
            settingAgain={false}
            onSetStart={() => {
              evening.goTo('start-position');
            }}
            picked={picked}
            inTable={inTable}
            hintLevels={evening.hintLevels}
            judgement={judgement}
            onJudge={judge}
            sending={
              <Button
                variant="primary"
                size="large"
                className="w-full"
                onClick={() => {
                  if (stage !== 'judged' && (judgement === null || !model.judge(judgement))) return;
                  evening.goTo('pack-up');
                }}
              >
                Go on: Pack up
              </Button>
            }
          />
        </>
      }
    />
  );
}
