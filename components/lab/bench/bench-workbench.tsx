'use client';

import type { ReactNode } from 'react';
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import { LabFrame } from '../shell/lab-frame';
import { LabOutcome } from '../shell/lab-outcome';
import { saveInWords } from '../shell/save-words';
import { SendingBox } from '../shell/sending-box';
import { SubmissionSender } from '../shell/submission-sender';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { useInBrowser } from '../shell/use-in-browser';
import { ViewSwitch } from '../shell/view-switch';
import type { BenchLabProps } from './bench-lab-props';
import { BenchPanel } from './bench-panel';
import type { BenchParts } from './bench-parts';
import { BenchReview } from './bench-review';
import type { BenchText } from './bench-text';
import { useBenchWork } from './use-bench-work';
import { useUndoKeys } from './use-undo-keys';

type BenchWorkbenchProps<V, D, S> = BenchLabProps<V> & {
  /** The same object on every render. */
  parts: BenchParts<V, D, S>;
  text: BenchText;
  renderResult: (result: AnyBenchResult) => ReactNode;
};

/** The workbench that all bench labs share: drawing or table, the panel, and the way to the mark. */
export function BenchWorkbench<V, D, S>(props: BenchWorkbenchProps<V, D, S>) {
  // This tab may keep a newer draft than the server's page was made with: the bench waits to see.
  if (useInBrowser()) return <Workbench {...props} />;
  return (
    <div className="grid h-[calc(100dvh-7rem)] min-h-[26rem] place-items-center p-6">
      <p role="status">The bench is being laid out …</p>
    </div>
  );
}

function Workbench<V, D, S>(props: BenchWorkbenchProps<V, D, S>) {
  const { parts, text, variant, mode, attemptKey } = props;
  const { emptyDraft, readDraft, Drawing, Table, Panel } = parts;
  const nextSequence = props.nextSequence ?? 1;
  const saving = useDraftSaving({ attemptKey, nextSequence, save: props.onSave, readDraft });
  const [start] = useState(
    () =>
      draftLeftBehind(attemptKey, nextSequence, readDraft) ?? readDraft(props.draft) ?? emptyDraft,
  );
  const dangersIn = (draft: D): number => parts.dangers?.(draft, variant) ?? 0;
  const work = useBenchWork(
    start,
    saving.push,
    (from, to) => mode === 'practice' || dangersIn(to) >= dangersIn(from),
  );
  const [view, setView] = useState<'drawing' | 'table'>('drawing');
  const [step, setStep] = useState<'work' | 'review'>('work');
  // On a phone the bench is seen first: the sheet waits folded.
  const [sheetOpen, setSheetOpen] = useState(false);
  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  useUndoKeys(work);
  const { stop } = saving;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    return (
      <LabOutcome
        title={`${text.name}: how it came out`}
        result={sent.result === null ? null : props.renderResult(sent.result)}
        late={sent.late}
        withheldText={props.withheldText}
      >
        {props.afterwards}
      </LabOutcome>
    );
  }

  const { draft } = work;
  const submission = parts.submissionOf(draft, variant);
  const missing = submission === null ? parts.missing(draft, variant) : '';
  // What is changed while it is read once more is no longer what was read.
  const reviewing = step === 'review' && submission !== null;
  const shown = {
    variant,
    draft,
    mode,
    change: (...[next, said, options]: Parameters<typeof work.change>) => {
      setStep('work');
      work.change(next, said, options);
    },
  };
  return (
    <LabFrame
      top={
        <>
          <h1 className="sr-only">{text.name}</h1>
          <ViewSwitch
            label={parts.viewLabel}
            views={[
              { value: 'drawing', label: parts.drawingName },
              { value: 'table', label: 'Table' },
            ]}
            view={view}
            onChange={setView}
          />
        </>
      }
      status={[work.said, saveInWords(saving.saveState)].filter((line) => line !== '').join(' ')}
      scene={
        view === 'drawing' ? (
          <Drawing {...shown} />
        ) : (
          <div className="h-full overflow-y-auto bg-page p-4 sm:p-6">
            <Table {...shown} />
          </div>
        )
      }
      summary={reviewing ? 'Read it once more' : parts.summary(draft, variant)}
      sheetOpen={sheetOpen}
      onSheetOpen={setSheetOpen}
      panel={
        <>
          {props.about === undefined ? null : (
            <div className="mb-2 text-sm text-soft">{props.about}</div>
          )}
          {reviewing ? (
            <BenchReview
              mode={mode}
              lines={parts.review(draft, variant)}
              onBack={() => {
                setStep('work');
              }}
            >
              <SendingBox
                state={sent}
                mode={mode}
                practiceLabel="Show how it came out"
                onSend={() => void sender.send(submission)}
              />
            </BenchReview>
          ) : (
            <BenchPanel
              title={text.task}
              mode={mode}
              missing={missing}
              onFinish={() => {
                setStep('review');
                setSheetOpen(true);
              }}
              hints={parts.hints(variant, draft).slice(0, props.hintLevels ?? 3)}
              work={work}
              onStartAfresh={() => {
                work.change(emptyDraft, 'Everything is as at the start. Undo brings it back.');
              }}
            >
              <Panel {...shown} />
            </BenchPanel>
          )}
        </>
      }
    />
  );
}
