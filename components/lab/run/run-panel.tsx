'use client';

import type { ReactNode } from 'react';
import { Pause, Play } from 'lucide-react';
import type { SkyLight } from '@/components/sky/sky-lights';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { SunCaution } from '@/components/ui/sun-caution';
import { HintBox } from '../shell/hint-box';
import { CentreStep } from './centre-step';
import { ChooseStep } from './choose-step';
import { ResultStep } from './result-step';
import type { RunModel } from './run-model';
import { runHints } from './run-hints';
import { RunReview } from './run-review';
import {
  afterwardsInWords,
  allowedInWords,
  approachInWords,
  judgeable,
  minutesInWords,
  stageTitles,
} from './run-words';
import { StageLine } from './stage-line';
import { StartStep } from './start-step';
import { useRunSnapshot } from './use-run-lab';
import { useStepHeading } from './use-step-heading';

type RunPanelProps = {
  model: RunModel;
  /** Once more, before the first star. */
  settingAgain: boolean;
  onSetStart: () => void;
  picked: SkyLight | null;
  inTable: boolean;
  hintLevels: number;
  /** What the learner is about to say, before it ends the run. */
  judgement: boolean | null;
  onJudge: (trust: boolean | null) => void;
  /** The button that sends, and how sending goes. */
  sending: ReactNode;
};

/** The task, and the one step that is next. */
export function RunPanel(props: RunPanelProps) {
  const { model, inTable, judgement, onJudge } = props;
  const { stage: reached, trusted, confirmed, over, full } = useRunSnapshot(model);
  const stage = props.settingAgain ? 'start-position' : reached;
  const { variant, mode } = model;
  const trust = trusted ?? judgement;
  const reviewing = trust !== null;
  const heading = useStepHeading(reviewing ? 'judged' : stage);
  const choosing = stage === 'choose-first' || stage === 'choose-second';
  const centring = stage === 'centre-first' || stage === 'centre-second';
  const judging = stage === 'result' || stage === 'check-third';
  const kit = {
    orientation: variant.kit.orientation,
    approach: approachInWords(variant.setup.finalApproach),
  };
  const hints = runHints(stage, kit).slice(0, props.hintLevels);
  return (
    <div className="space-y-4">
      <StageLine stage={reviewing ? 'judged' : stage} />
      <header>
        <h2
          ref={heading}
          tabIndex={-1}
          className="text-lg leading-snug font-semibold focus-visible:outline-none max-lg:sr-only"
        >
          {reviewing ? stageTitles.judged : stageTitles[stage]}
        </h2>
        <p className="text-sm text-soft">
          {variant.placeName} · {variant.localTimeText} · telescope {variant.kit.name}
        </p>
      </header>
      {over || full ? <UsedUp model={model} /> : null}
      {reviewing ? (
        <RunReview
          model={model}
          mode={mode}
          trust={trust}
          {...(trusted === null
            ? {
                onBack: () => {
                  onJudge(null);
                },
              }
            : {})}
        >
          {props.sending}
        </RunReview>
      ) : (
        <>
          {stage === 'start-position' ? <StartStep model={model} inTable={inTable} /> : null}
          {choosing ? (
            <ChooseStep
              key={stage}
              model={model}
              picked={props.picked}
              inTable={inTable}
              onSetStart={props.onSetStart}
            />
          ) : null}
          {centring ? <CentreStep model={model} /> : null}
          {judging ? <ResultStep model={model} /> : null}
          <Aside model={model} inTable={inTable} canStartAgain={confirmed.length > 0} />
          {mode === 'practice' && hints.length > 0 ? <HintBox hints={hints} step={stage} /> : null}
        </>
      )}
      <SunCaution short />
    </div>
  );
}

/** Nothing moves any more: there is something to judge, or the run begins anew. */
function UsedUp({ model }: { model: RunModel }) {
  const { stage, over } = useRunSnapshot(model);
  const canJudge = judgeable(stage);
  return (
    <Notice
      tone="caution"
      title={over ? 'Two hours under the sky are over' : 'There have been too many moves'}
      live="status"
    >
      <p>Nothing moves any more. {afterwardsInWords(canJudge)}</p>
      {canJudge ? null : (
        <Button
          className="mt-2"
          onClick={() => {
            model.beginAnew();
          }}
        >
          Begin the run again
        </Button>
      )}
    </Notice>
  );
}

/** What one may do at any step: let the sky stand still, or give up both stars. */
function Aside({
  model,
  inTable,
  canStartAgain,
}: {
  model: RunModel;
  inTable: boolean;
  canStartAgain: boolean;
}) {
  const { paused, minutes, stage } = useRunSnapshot(model);
  const { minutesAllowed } = model.variant;
  if (stage === 'start-position') return null;
  return (
    <div className="space-y-2 border-t border-line pt-3">
      <div className="flex flex-wrap items-center gap-x-3 gap-y-2">
        {model.mayPause && !inTable ? (
          <Button
            aria-pressed={paused}
            onClick={() => {
              model.pause(!paused, performance.now());
            }}
          >
            {paused ? (
              <Play aria-hidden="true" className="size-4" />
            ) : (
              <Pause aria-hidden="true" className="size-4" />
            )}
            {paused ? 'Let the sky go on' : 'Pause the sky'}
          </Button>
        ) : null}
        <span className="text-sm text-soft">
          {minutesInWords(minutes)}
          {minutesAllowed === null ? '' : `; ${allowedInWords(minutesAllowed)}`}
        </span>
      </div>
      {canStartAgain ? (
        <details className="text-sm">
          <summary className="font-semibold">A star was wrong?</summary>
          <p className="mt-1">
            A real mount cannot take a star back either. You can give up both and do them again; the
            time goes on.
          </p>
          <Button
            className="mt-2"
            onClick={() => {
              model.startAgain();
            }}
          >
            Start the two stars again
          </Button>
        </details>
      ) : null}
    </div>
  );
}
