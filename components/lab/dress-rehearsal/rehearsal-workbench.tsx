'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import { benchStages } from '@/lib/rehearsal/stages';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { LabOutcome } from '../shell/lab-outcome';
import { saveInWords } from '../shell/save-words';
import { SubmissionSender } from '../shell/submission-sender';
import { BenchStages } from './bench-stages';
import { DressRehearsalResultView } from './dress-rehearsal-result';
import type { Evening } from './evening';
import { EveningReview } from './evening-review';
import { PackUpStage } from './pack-up-stage';
import { PairStage } from './pair-stage';
import { handedIn } from './rehearsal-work';
import { RunStage } from './run-stage';
import { StartStage } from './start-stage';
import { useEvening } from './use-evening';

type RehearsalWorkbenchProps = BenchLabProps<DressRehearsalVariant> & { catalogue: StarCatalogue };

/** The evening's stages, one at a time, and the way to the debrief. */
export function RehearsalWorkbench(props: RehearsalWorkbenchProps) {
  const { variant, catalogue, mode, attemptKey } = props;
  const kept = useEvening(props);
  const { draft } = kept;
  const [view, setView] = useState<'drawing' | 'table'>('drawing');
  // On a phone the bench is seen first: the sheet waits folded.
  const [sheetOpen, setSheetOpen] = useState(false);
  const [reviewing, setReviewing] = useState(false);
  const [arrived, setArrived] = useState(false);
  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  const { stop } = kept;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    return (
      <LabOutcome
        title="Dress rehearsal: how it came out"
        result={
          sent.result?.lab === 'dress-rehearsal' ? (
            <DressRehearsalResultView variant={variant} result={sent.result} />
          ) : null
        }
        late={sent.late}
        withheldText={props.withheldText}
      >
        {props.afterwards}
      </LabOutcome>
    );
  }
  const evening: Evening = {
    variant,
    catalogue,
    mode,
    draft,
    view,
    sheetOpen,
    arrived,
    hintLevels: mode === 'check' ? 0 : (props.hintLevels ?? 3),
    about: props.about,
    work: (...done) => {
      setReviewing(false);
      kept.work(...done);
    },
    goTo: (stage) => {
      setReviewing(false);
      setSheetOpen(false);
      setArrived(true);
      kept.goTo(stage);
    },
    tell: kept.tell,
    said: [kept.said, saveInWords(kept.saveState)].filter((text) => text !== '').join(' '),
    onView: setView,
    onSheetOpen: setSheetOpen,
  };
  if (reviewing) {
    return (
      <EveningReview
        evening={evening}
        sent={sent}
        onBack={() => {
          setReviewing(false);
        }}
        onSend={() => void sender.send(handedIn(draft))}
      />
    );
  }
  const bench = benchStages.find((stage) => stage === draft.at);
  if (bench !== undefined) return <BenchStages evening={evening} stage={bench} />;
  switch (draft.at) {
    case 'start-position':
      return <StartStage evening={evening} />;
    case 'pick-the-pair':
      return <PairStage evening={evening} />;
    case 'alignment-run':
    case 'check-on-a-third':
      return <RunStage evening={evening} stage={draft.at} />;
    default:
      return (
        <PackUpStage
          evening={evening}
          onHandIn={() => {
            setReviewing(true);
          }}
        />
      );
  }
}
