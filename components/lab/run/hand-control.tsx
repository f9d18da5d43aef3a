'use client';

import { Button } from '@/components/ui/button';
import { FocusKnob } from './focus-knob';
import { RockerCross } from './rocker-cross';
import type { RunModel } from './run-model';
import { JudgeButtons } from './judge-buttons';
import { pressedTwice } from './press-twice';
import { judgingQuestion } from './run-words';
import { StepMoves } from './step-moves';
import { useRunSnapshot } from './use-run-lab';

type HandControlProps = {
  model: RunModel;
  /** The table has its own moves. */
  inTable: boolean;
  /** Before it ends the run it is read once more. */
  onJudge: (trust: boolean) => void;
};

/** What one holds in the hand: the two strips, the knob, and what is said when the star is there. */
export function HandControl({ model, inTable, onJudge }: HandControlProps) {
  const { stage, moving, rockers, paused } = useRunSnapshot(model);
  const centring = stage === 'centre-first' || stage === 'centre-second';
  // A star that is given cannot be turned down.
  const given = stage === 'centre-first' && model.variant.givenHip !== null;
  return (
    <section
      aria-label="Hand control"
      className="space-y-2.5 select-none border-t-2 border-strong bg-panel px-3 py-2.5 lg:border-s-2 lg:px-5 lg:py-4"
    >
      <div className="flex items-center gap-3 lg:gap-4">
        {inTable ? null : (
          <div className="w-36 shrink-0 lg:w-42">
            <div className="size-36 lg:size-42">
              <RockerCross
                rockers={rockers}
                disabled={moving || paused}
                onChange={({ azimuth, altitude }) => {
                  model.setRockers(azimuth, altitude);
                }}
              />
            </div>
            <p className="hidden text-center text-xs leading-tight text-soft lg:block">
              Farther from the middle is faster
            </p>
          </div>
        )}
        <div className="grid min-w-0 flex-1 grid-cols-[minmax(0,1fr)] gap-2">
          {centring ? (
            <Button
              variant="primary"
              size="large"
              className="px-1 text-base! whitespace-nowrap"
              disabled={moving}
              onClick={() => {
                if (!pressedTwice(model, stage)) model.confirm();
              }}
            >
              This is the star
            </Button>
          ) : null}
          {moving ? (
            <Button
              onClick={() => {
                model.stop();
                // "Another star" takes this button's place.
                pressedTwice(model, 'another-star');
              }}
            >
              Stop
            </Button>
          ) : centring && !given ? (
            <Button
              onClick={() => {
                if (!pressedTwice(model, 'another-star')) model.anotherStar();
              }}
            >
              Another star
            </Button>
          ) : null}
          {stage === 'check-third' && !moving ? (
            <>
              <p className="text-sm leading-tight font-semibold">{judgingQuestion}</p>
              <JudgeButtons onJudge={onJudge} className="lg:px-1" />
            </>
          ) : null}
          {inTable ? null : <FocusKnob model={model} />}
        </div>
      </div>
      {inTable ? null : (
        <div className="hidden lg:block">
          <StepMoves model={model} disabled={moving || paused} />
        </div>
      )}
    </section>
  );
}
