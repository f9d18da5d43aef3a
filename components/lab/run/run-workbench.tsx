'use client';

import dynamic from 'next/dynamic';
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import { webglAvailable } from '@/components/sky/webgl-available';
import type { RunStage } from '@/lib/alignment/run-state';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { LabFrame } from '../shell/lab-frame';
import { saveInWords } from '../shell/save-words';
import { SendingBox } from '../shell/sending-box';
import { SubmissionSender } from '../shell/submission-sender';
import { ViewSwitch } from '../shell/view-switch';
import { ChooseControl } from './choose-control';
import { HandControl } from './hand-control';
import { JudgeControl } from './judge-control';
import type { RunLabProps } from './run-lab-props';
import { RunModel } from './run-model';
import { RunOutcome } from './run-outcome';
import { RunPanel } from './run-panel';
import { RunScene } from './run-scene';
import { stageTitles } from './run-words';
import { useStartChoice } from './start-choice';
import { StartControl } from './start-step';
import { SunNear } from './sun-near';
import { useRunSaving } from './use-run-saving';
import { useRunSnapshot, useRunTime } from './use-run-lab';

// Without something of its own to show meanwhile, the whole lab would stand still until it is there.
const RunTable = dynamic(() => import('./run-table').then((module) => module.RunTable), {
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

type RunView = 'scene' | 'table';

/** The lab with its catalogue at hand. */
export function RunWorkbench(props: RunLabProps & { catalogue: StarCatalogue }) {
  const { variant, mode, attemptKey, catalogue } = props;
  const saving = useRunSaving(props);
  const [model] = useState(
    () => new RunModel({ variant, catalogue, mode, log: saving.start.log, onLog: saving.push }),
  );
  useRunTime(model);
  const { stage, said, targetHip } = useRunSnapshot(model);
  const [wantsStart, setWantsStart] = useState(false);
  const start = useStartChoice(variant.setup.declinationDeg);
  const [drawable, setDrawable] = useState(webglAvailable);
  const [wantedView, setView] = useState<RunView>('scene');
  const view = drawable ? wantedView : 'table';
  const inTable = view === 'table';
  const settingAgain = wantsStart && stage === 'choose-first' && !inTable;
  const [picked, setPicked] = useState<SkyLight | null>(null);
  const [speed, setSpeed] = useState(3);
  const [judgement, setJudgement] = useState<boolean | null>(null);
  // Each step begins with the panel open where there is something to read, and folded to steer.
  const [sheet, setSheet] = useState<{ stage: RunStage; open: boolean } | null>(null);
  const sheetOpen =
    sheet?.stage === stage ? sheet.open : !inTable && !steeringStages.includes(stage);

  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  const { stop } = saving;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    return (
      <RunOutcome
        variant={variant}
        catalogue={catalogue}
        result={sent.result}
        late={sent.late}
        withheldText={props.withheldText}
      >
        {props.afterwards}
      </RunOutcome>
    );
  }
  const setSheetOpen = (open: boolean): void => {
    setSheet({ stage, open });
  };
  /** Reading it once more costs no time. */
  const judge = (trust: boolean | null): void => {
    setJudgement(trust);
    setSheetOpen(trust !== null || !steeringStages.includes(stage));
    model.holdSky(trust !== null, 'review');
  };
  const send = (): void => {
    if (stage !== 'judged' && (judgement === null || !model.judge(judgement))) return;
    void sender.send({ log: [...model.done] });
  };
  const steering = steeringStages.includes(stage) && judgement === null;
  const saveText = saveInWords(saving.saveState);
  const summary =
    steering && targetHip !== null
      ? `${stageTitles[stage]}: ${model.nameOf(targetHip)}`
      : stageTitles[judgement !== null ? 'judged' : settingAgain ? 'start-position' : stage];
  return (
    <LabFrame
      top={
        <ViewSwitch
          views={[
            { value: 'scene', label: 'Telescope', disabled: !drawable },
            { value: 'table', label: 'Table' },
          ]}
          view={view}
          label="How to do the run"
          onChange={(next) => {
            setView(next);
            setSheetOpen(next === 'scene' && !steering);
          }}
        />
      }
      status={[said, saveText].filter((text) => text !== '').join(' ')}
      notice={
        <>
          {drawable ? null : <p className="bg-caution-soft px-4 py-2 text-sm">{noWebgl}</p>}
          <SunNear model={model} />
        </>
      }
      scene={
        inTable ? (
          <div className="size-full overflow-y-auto">
            <RunTable model={model} />
          </div>
        ) : (
          <RunScene
            model={model}
            start={start}
            settingAgain={settingAgain}
            picked={picked}
            onPick={(light) => {
              setPicked(light);
              if (light !== null && !steering) setSheetOpen(true);
            }}
            steering={steering}
            speed={speed}
            onSpeed={(next) => {
              setSpeed(next);
              model.tell(`Speed ${String(next)} of 5.`);
            }}
            figuresOffered={mode === 'practice'}
            onLost={() => {
              setDrawable(false);
            }}
          />
        )
      }
      controls={
        steering ? (
          <HandControl model={model} inTable={inTable} onJudge={judge} />
        ) : settingAgain || (stage === 'start-position' && !inTable) ? (
          <StartControl
            model={model}
            start={start}
            onLocked={() => {
              setWantsStart(false);
            }}
          />
        ) : choosingStages.includes(stage) ? (
          <ChooseControl key={stage} model={model} />
        ) : stage === 'result' && judgement === null ? (
          <JudgeControl model={model} onJudge={judge} />
        ) : undefined
      }
      summary={summary}
      sheetOpen={sheetOpen}
      onSheetOpen={setSheetOpen}
      panel={
        <>
          {props.about === undefined ? null : (
            <div className="mb-2 text-sm text-soft">{props.about}</div>
          )}
          <h1 className="sr-only">Alignment run</h1>
          <RunPanel
            model={model}
            settingAgain={settingAgain}
            onSetStart={() => {
              setWantsStart(true);
            }}
            picked={picked}
            inTable={inTable}
            hintLevels={props.hintLevels ?? 3}
            judgement={judgement}
            onJudge={judge}
            sending={
              <SendingBox
                state={sent}
                mode={mode}
                practiceLabel="Show how it came out"
                onSend={send}
              />
            }
          />
        </>
      }
    />
  );
}
