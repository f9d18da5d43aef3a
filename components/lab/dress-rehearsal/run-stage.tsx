'use client';

import { useMemo } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { rehearsalRun } from '@/lib/grading/bench/dress-rehearsal/rehearsal-run';
import type { RehearsalStage } from '@/lib/rehearsal/stages';
import { runLabVariant } from '../run/run-lab-variant';
import type { Evening } from './evening';
import { StageFrame } from './stage-frame';
import { StagePanel } from './stage-panel';
import { notReadyWords, stageWords } from './stage-words';
import { SteeredRun } from './steered-run';

type RunStageProps = { evening: Evening; stage: 'alignment-run' | 'check-on-a-third' };

/** The alignment, on a telescope as the benches have left it; or what stands in its way. */
export function RunStage({ evening, stage }: RunStageProps) {
  const { variant, catalogue, draft } = evening;
  const { benches, clutchesLocked, plannedPair } = draft;
  const run = useMemo(
    () => rehearsalRun(variant, { benches, clutchesLocked, plannedPair }, catalogue),
    [variant, benches, clutchesLocked, plannedPair, catalogue],
  );
  if (!run.ok) {
    const { stage: back, ...words } = notReadyWords[run.reason];
    return <InTheWay evening={evening} stage={stage} {...words} back={back} />;
  }
  if (!draft.log.some((action) => action.do === 'set-start')) {
    return (
      <InTheWay
        evening={evening}
        stage={stage}
        title="The tube has no start position"
        text="The mount counts from where the tube lay at first. Lay it level, facing true north, and lock the clutches."
        back="start-position"
      />
    );
  }
  const { placeName } = variant.benches['clock-and-place'].card;
  return (
    <SteeredRun
      // Another set-up is another run: a tube that is laid anew comes with its clutches locked.
      key={String(clutchesLocked)}
      evening={evening}
      variant={runLabVariant(run.variant, { placeName })}
      stage={stage}
    />
  );
}

function InTheWay({
  evening,
  stage,
  title,
  text,
  back,
}: RunStageProps & { title: string; text: string; back: RehearsalStage }) {
  const why = (
    <Notice tone="caution" title={title} live="status">
      <p>{text}</p>
      <Button
        onClick={() => {
          evening.goTo(back);
        }}
      >
        Back to: {stageWords[back].title}
      </Button>
    </Notice>
  );
  return (
    <StageFrame
      evening={evening}
      viewLabel="How to do the run"
      drawingName="Telescope"
      scene={<div className="grid h-full place-items-center bg-page p-6">{why}</div>}
      summary={title}
      panel={
        <StagePanel evening={evening} stage={stage} hints={[]}>
          <p>The alignment cannot begin yet.</p>
        </StagePanel>
      }
    />
  );
}
