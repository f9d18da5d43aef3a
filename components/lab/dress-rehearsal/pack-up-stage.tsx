'use client';

import { Button } from '@/components/ui/button';
import { packedUp, packUpSteps, type PackUpStep } from '@/lib/rehearsal/pack-up';
import type { Evening } from './evening';
import { HandIn } from './hand-in';
import { packUpName } from './pack-up-words';
import { PackUpCards } from './pack-up-cards';
import { StageFrame, TableSpace } from './stage-frame';
import { StagePanel } from './stage-panel';
import { StandPicture } from './stand-picture';

const hints = [
  'While there is power the motors still do something for you.',
  'What went on last comes off first, and glass is covered before hands come near it.',
  'Before a clamp is opened somebody holds what it held. Last of all somebody looks for what was dropped.',
];

type PackUpStageProps = { evening: Evening; onHandIn: () => void };

/** The evening's last stage: everything comes off and away, each thing once, in a safe order. */
export function PackUpStage({ evening, onHandIn }: PackUpStageProps) {
  const done = evening.draft.packedUp.length;
  const cards = <PackUpCards evening={evening} />;
  return (
    <StageFrame
      evening={evening}
      viewLabel="How to look at the telescope"
      drawingName="Telescope"
      scene={
        evening.view === 'drawing' ? (
          <div className="flex h-full flex-col overflow-y-auto bg-page">
            <StandPicture evening={evening} />
            <div className="border-t border-line p-4">{cards}</div>
          </div>
        ) : (
          <TableSpace>{cards}</TableSpace>
        )
      }
      summary={`Put away: ${String(done)} of ${String(packUpSteps.length)} steps`}
      panel={
        <StagePanel evening={evening} stage="pack-up" hints={hints}>
          <p>
            The last look is taken. Take the telescope down and leave the place as you found it, by
            lamp light, with somebody to lift with.
          </p>
          <DoneSteps evening={evening} />
          <HandIn evening={evening} onHandIn={onHandIn} />
          <p className="text-sm">
            <strong className="font-semibold text-caution">With care:</strong> lift with two, and
            keep fingers clear of folding legs.
          </p>
        </StagePanel>
      }
    />
  );
}

const dangersIn = (steps: readonly PackUpStep[]): number =>
  packedUp(steps).broken.filter(({ danger }) => danger).length;

function DoneSteps({ evening }: { evening: Evening }) {
  const { draft, mode, work } = evening;
  const takeBack = (step: PackUpStep): void => {
    const left = draft.packedUp.filter((one) => one !== step);
    if (mode === 'check' && dangersIn(left) < dangersIn(draft.packedUp))
      evening.tell('What happened has happened: in a check it cannot be taken back.');
    else work('pack-up', { packedUp: left }, `${packUpName(step)}: taken back.`);
  };
  return (
    <section aria-labelledby="packed-heading" className="space-y-2">
      <h3 id="packed-heading" className="text-sm font-semibold">
        Done, in this order
      </h3>
      {draft.packedUp.length === 0 ? <p className="text-sm text-soft">Nothing yet.</p> : null}
      <ol className="list-decimal space-y-1 ps-6 text-sm">
        {draft.packedUp.map((step) => (
          <li key={step}>
            <span className="flex items-baseline justify-between gap-2">
              {packUpName(step)}
              <Button
                variant="plain"
                aria-label={`Take back: ${packUpName(step)}`}
                onClick={() => {
                  takeBack(step);
                }}
              >
                Take back
              </Button>
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
