'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import { StatusLine } from '@/components/ui/status-line';
import { LabFrame } from '../shell/lab-frame';
import { saveInWords } from '../shell/save-words';
import { SendingBox } from '../shell/sending-box';
import { SubmissionSender } from '../shell/submission-sender';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { EvidenceBoard } from './evidence-board';
import type { FaultStep } from './fault-choice';
import { faultSubmissionOf } from './fault-choice';
import type { FaultLabProps } from './fault-lab-props';
import { FaultOutcome } from './fault-outcome';
import { FaultPanel } from './fault-panel';
import { readFaultDraft } from './read-fault-draft';
import { useFaultLab } from './use-fault-lab';

const summaries: Readonly<Record<FaultStep, string>> = {
  fault: 'Name the fault',
  cure: 'Name the cure',
  review: 'Read it once more',
};

/** "What went wrong?": the evidence on the bench, and beside it the fault and its cure to be named. */
export function FaultLab(props: FaultLabProps) {
  // This tab may keep a newer draft than the server's page was made with: the bench waits to see.
  const inBrowser = useSyncExternalStore(
    noSubscription,
    () => true,
    () => false,
  );
  if (inBrowser) return <FaultBench {...props} />;
  return (
    <div className="on-sky grid h-[calc(100dvh-7rem)] min-h-[26rem] place-items-center p-6">
      <p role="status">The evidence is being laid out …</p>
    </div>
  );
}

const noSubscription = (): (() => void) => () => undefined;

function FaultBench(props: FaultLabProps) {
  const { variant, mode, attemptKey } = props;
  const nextSequence = props.nextSequence ?? 1;
  const saving = useDraftSaving({
    attemptKey,
    nextSequence,
    save: props.onSave,
    readDraft: readFaultDraft,
  });
  const [start] = useState(
    () => draftLeftBehind(attemptKey, nextSequence, readFaultDraft) ?? props.draft,
  );
  const lab = useFaultLab({
    view: variant,
    draft: start,
    onDraft: saving.push,
    onLook: props.onLook,
  });
  // On a phone the evidence is read first: the sheet waits folded.
  const [sheetOpen, setSheetOpen] = useState(false);
  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  const submission = faultSubmissionOf(lab.choice);
  const { stop } = saving;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    return (
      <FaultOutcome debrief={sent.result} late={sent.late} withheldText={props.withheldText}>
        {props.afterwards}
      </FaultOutcome>
    );
  }
  const saveText = saveInWords(saving.saveState);
  return (
    <LabFrame
      scene={<EvidenceBoard lab={lab} />}
      summary={summaries[lab.choice.step]}
      sheetOpen={sheetOpen}
      onSheetOpen={setSheetOpen}
      panel={
        <>
          {props.about === undefined ? null : (
            <div className="mb-2 text-sm text-soft">{props.about}</div>
          )}
          <FaultPanel
            lab={lab}
            mode={mode}
            hintLevels={props.hintLevels ?? 3}
            sending={
              <SendingBox
                state={sent}
                mode={mode}
                practiceLabel="Show what it was"
                onSend={() => {
                  if (submission !== null) void sender.send(submission);
                }}
              />
            }
          />
          <StatusLine className="mt-3">
            {[lab.said, saveText].filter((text) => text !== '').join(' ')}
          </StatusLine>
        </>
      }
    />
  );
}
