'use client';

import dynamic from 'next/dynamic';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { StatusLine } from '@/components/ui/status-line';
import { webglAvailable } from '@/components/sky/webgl-available';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { LabFrame } from '../shell/lab-frame';
import { saveInWords } from '../shell/save-words';
import { SendingBox } from '../shell/sending-box';
import { SubmissionSender } from '../shell/submission-sender';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { ViewSwitch } from '../shell/view-switch';
import type { PairLabProps } from './pair-lab-props';
import { PairControl } from './pair-control';
import { PairOutcome } from './pair-outcome';
import { PairPanel } from './pair-panel';
import { submissionOf } from './pair-choice';
import { readPairDraft } from './read-pair-draft';
import { ordinalOf } from './pair-words';
import type { PairLabModel } from './use-pair-lab';
import { usePairLab } from './use-pair-lab';

type PairView = 'sky' | 'table';

// The renderer is the heaviest part of the lab: it comes after the page, and not at all to the table.
const PairSky = dynamic(() => import('./pair-sky').then((module) => module.PairSky), {
  ssr: false,
  loading: () => (
    <div className="on-sky grid size-full place-items-center">
      <p role="status">The sky is being drawn …</p>
    </div>
  ),
});
// Without something of its own to show meanwhile, the whole lab would stand still until it is there.
const PairTable = dynamic(() => import('./pair-table').then((module) => module.PairTable), {
  loading: () => (
    <p role="status" className="p-4">
      The table is being laid out …
    </p>
  ),
});

const noWebgl =
  'This browser cannot draw the sky, so the table is open instead: it asks the same and counts the same.';

function summaryOf(lab: PairLabModel): string {
  switch (lab.stage.at) {
    case 'first-star':
    case 'second-star':
      return lab.selected === null
        ? `Choose your ${ordinalOf(lab.choice.draft.picks.length)} star`
        : 'A light is picked: see where it stands';
    case 'look-alike':
      return `Look-alikes of ${lab.nameOf(`hip-${lab.stage.hip}`)}`;
    case 'review':
      return 'Read it once more';
    case 'none':
      return 'You say: no good pair';
  }
}

/** The lab with its catalogue at hand. */
export function PairWorkbench(props: PairLabProps & { catalogue: StarCatalogue }) {
  const { sky, mode, attemptKey, catalogue } = props;
  const nextSequence = props.nextSequence ?? 1;
  const saving = useDraftSaving({
    attemptKey,
    nextSequence,
    save: props.onSave,
    readDraft: readPairDraft,
  });
  const [start] = useState(
    () => draftLeftBehind(attemptKey, nextSequence, readPairDraft) ?? props.draft,
  );
  const bench = usePairLab({ sky, catalogue, draft: start, onDraft: saving.push });
  const [drawable, setDrawable] = useState(webglAvailable);
  // On a phone the sheet would leave the table two rows.
  const [sheetOpen, setSheetOpen] = useState(drawable);
  const lab: PairLabModel = {
    ...bench,
    look: (light) => {
      bench.look(light);
      if (light !== null) setSheetOpen(true);
    },
  };
  const [wantedView, setView] = useState<PairView>('sky');
  const view = drawable ? wantedView : 'table';

  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  const submission = useMemo(
    () => submissionOf(lab.choice, sky.givenHip),
    [lab.choice, sky.givenHip],
  );
  const { stop } = saving;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    return (
      <PairOutcome
        sky={sky}
        catalogue={catalogue}
        result={sent.result}
        late={sent.late}
        withheldText={props.withheldText}
      >
        {props.afterwards}
      </PairOutcome>
    );
  }
  const saveText = saveInWords(saving.saveState);
  const changeView = (next: PairView): void => {
    setView(next);
    setSheetOpen(next === 'sky');
  };
  const lost = (): void => {
    setDrawable(false);
    setSheetOpen(false);
  };
  return (
    <LabFrame
      top={
        <ViewSwitch
          views={[
            { value: 'sky', label: 'Sky', disabled: !drawable },
            { value: 'table', label: 'Table' },
          ]}
          view={view}
          label="How to look at the sky"
          onChange={changeView}
        />
      }
      notice={drawable ? null : <p className="bg-caution-soft px-4 py-2 text-sm">{noWebgl}</p>}
      scene={
        view === 'sky' ? (
          <PairSky
            lab={lab}
            figuresOffered={mode === 'practice' && (props.figuresOffered ?? true)}
            onLost={lost}
          />
        ) : (
          <div className="size-full overflow-y-auto">
            <PairTable lab={lab} />
          </div>
        )
      }
      controls={
        <PairControl
          lab={lab}
          sending={
            <SendingBox
              state={sent}
              mode={mode}
              practiceLabel="Show how good it is"
              onSend={() => {
                if (submission !== null) void sender.send(submission);
              }}
            />
          }
        />
      }
      summary={summaryOf(lab)}
      sheetOpen={sheetOpen}
      onSheetOpen={setSheetOpen}
      panel={
        <>
          {props.about === undefined ? null : (
            <div className="mb-2 text-sm text-soft">{props.about}</div>
          )}
          <h1 className="sr-only">Pick the pair</h1>
          <PairPanel
            lab={lab}
            mode={mode}
            inTable={view === 'table'}
            hintLevels={props.hintLevels ?? 3}
          />
          <StatusLine className="mt-3">
            {[lab.said, saveText].filter((text) => text !== '').join(' ')}
          </StatusLine>
        </>
      }
    />
  );
}
