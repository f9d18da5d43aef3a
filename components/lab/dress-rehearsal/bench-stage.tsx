'use client';

import type { BenchStage as BenchStageId } from '@/lib/rehearsal/stages';
import { Notice } from '@/components/ui/notice';
import type { BenchParts } from '../bench/bench-parts';
import { useBenchWork } from '../bench/use-bench-work';
import { useUndoKeys } from '../bench/use-undo-keys';
import type { Evening } from './evening';
import { StageFrame, TableSpace } from './stage-frame';
import { StagePanel } from './stage-panel';

type BenchStageProps<V, D, S> = {
  evening: Evening;
  stage: BenchStageId;
  parts: BenchParts<V, D, S>;
  variant: V;
  start: D;
  /** The bench's work, put where it belongs in the evening. */
  onChange: (draft: D) => void;
};

/** A lab's bench as a stage of the evening: its own drawing, table, panel and hints. */
export function BenchStage<V, D, S>(props: BenchStageProps<V, D, S>) {
  const { evening, stage, parts, variant } = props;
  const { Drawing, Table, Panel } = parts;
  const dangersIn = (draft: D): number => parts.dangers?.(draft, variant) ?? 0;
  const work = useBenchWork(
    props.start,
    props.onChange,
    // In a check what happened has happened, on this bench as on its own.
    (from, to) => evening.mode === 'practice' || dangersIn(to) >= dangersIn(from),
  );
  useUndoKeys(work);
  const { draft } = work;
  const shown = { variant, draft, mode: evening.mode, change: work.change };
  return (
    <StageFrame
      evening={evening}
      viewLabel={parts.viewLabel}
      drawingName={parts.drawingName}
      status={work.said}
      scene={
        evening.view === 'drawing' ? (
          <Drawing {...shown} />
        ) : (
          <TableSpace>
            <Table {...shown} />
          </TableSpace>
        )
      }
      summary={parts.summary(draft, variant)}
      panel={
        <StagePanel
          evening={evening}
          stage={stage}
          steps={{
            ...work,
            onStartAfresh: () => {
              work.change(
                parts.emptyDraft,
                'Everything here is as at the start. Undo brings it back.',
              );
            },
          }}
          hints={parts.hints(variant, draft)}
        >
          {evening.variant.foundDone.includes(stage) ? (
            <Notice title="Somebody has done this before you">
              It may be right or not. Look it over before you trust it.
            </Notice>
          ) : null}
          {evening.draft.log.length > 1 ? (
            <Notice tone="caution" title="An alignment is under way">
              Look as long as you like. Whatever you change here, the alignment begins again, as it
              would outdoors.
            </Notice>
          ) : null}
          <Panel {...shown} />
        </StagePanel>
      }
    />
  );
}
