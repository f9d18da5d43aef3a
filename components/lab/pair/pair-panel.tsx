'use client';

import { SunCaution } from '@/components/ui/sun-caution';
import { HintBox } from '../shell/hint-box';
import { hintsFor } from './hints';
import { KeptStars } from './kept-stars';
import { LookAlikeQuestion } from './look-alike-question';
import { PairReview } from './pair-review';
import { PickStep } from './pick-step';
import { ProposalStep } from './proposal-step';
import { taskWords } from './pair-words';
import type { PairLabModel } from './use-pair-lab';

type PairPanelProps = {
  lab: PairLabModel;
  mode: 'practice' | 'check';
  /** Whether lights are told by their letter. */
  inTable: boolean;
  hintLevels: number;
};

/** The task, the two picks and what there is to know for the one step that is next. */
export function PairPanel({ lab, mode, inTable, hintLevels }: PairPanelProps) {
  const { sky, stage } = lab;
  const task = taskWords[sky.task];
  const choosing = stage.at === 'first-star' || stage.at === 'second-star';
  // On a phone there is room for one thing: the light in hand, or the step that is next.
  const atHand = lab.selected !== null || !choosing;
  const behind = atHand ? 'hidden lg:block' : undefined;
  return (
    <div className="space-y-4">
      <header className={behind}>
        <h2 className="text-lg leading-snug font-semibold">{task.title}</h2>
        <p className="text-sm text-soft">
          {sky.placeName} · {sky.localTimeText} · telescope {sky.kitName}
        </p>
        <p className="mt-2 text-sm">{task.text}</p>
      </header>
      <div className={behind}>
        <KeptStars lab={lab} />
      </div>
      {choosing && sky.task === 'mount-proposes' ? (
        <ProposalStep lab={lab} inTable={inTable} />
      ) : null}
      {choosing && sky.task !== 'mount-proposes' ? <PickStep lab={lab} inTable={inTable} /> : null}
      {stage.at === 'look-alike' ? (
        <LookAlikeQuestion key={stage.hip} lab={lab} hip={stage.hip} inTable={inTable} />
      ) : null}
      {stage.at === 'review' || stage.at === 'none' ? <PairReview lab={lab} mode={mode} /> : null}
      {mode === 'practice' && hintLevels > 0 ? <PairHints lab={lab} levels={hintLevels} /> : null}
      <SunCaution short />
    </div>
  );
}

function PairHints({ lab, levels }: { lab: PairLabModel; levels: number }) {
  const { picks } = lab.choice.draft;
  const places = picks.flatMap((pick) => {
    const place = lab.placeOf(`hip-${pick.hip}`);
    return place === null ? [] : [place];
  });
  // They start afresh with each star.
  return <HintBox hints={hintsFor(lab.sky, places).slice(0, levels)} step={picks.length} />;
}
