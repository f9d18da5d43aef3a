'use client';

import type { ReactNode } from 'react';
import { StatusLine } from '@/components/ui/status-line';
import { LabFrame } from '../shell/lab-frame';
import { ViewSwitch } from '../shell/view-switch';
import type { Evening } from './evening';
import { StagePath } from './stage-path';
import { stillToDo } from './stages-done';

type StageFrameProps = {
  evening: Evening;
  viewLabel: string;
  drawingName: string;
  /** Where it cannot be drawn, the table stands alone. */
  drawable?: boolean;
  /** Of the stage itself, beside what the evening says. */
  status?: string;
  notice?: ReactNode;
  scene: ReactNode;
  controls?: ReactNode;
  /** The panel in one line, folded on a phone. */
  summary: string;
  panel: ReactNode;
};

/** One stage of the evening in the frame of all labs, below the line of stages. */
export function StageFrame({ evening, drawable = true, ...stage }: StageFrameProps) {
  const { draft, variant } = evening;
  const said = [stage.status ?? '', evening.said].filter((text) => text !== '').join(' ');
  return (
    <LabFrame
      top={
        <>
          <h1 className="sr-only">Dress rehearsal</h1>
          <StagePath
            at={draft.at}
            arrived={evening.arrived}
            isDone={(one) => stillToDo(draft, variant, one) === ''}
            onGo={evening.goTo}
          />
          <div className="flex flex-col lg:flex-row">
            <ViewSwitch
              label={stage.viewLabel}
              views={[
                { value: 'drawing', label: stage.drawingName, disabled: !drawable },
                { value: 'table', label: 'Table' },
              ]}
              view={drawable ? evening.view : 'table'}
              onChange={evening.onView}
            />
            <StatusLine className="border-b border-line bg-panel px-4 py-1 leading-snug empty:min-h-0 empty:border-b-0 empty:py-0 lg:flex lg:flex-1 lg:items-center lg:border-b-2 lg:border-strong lg:empty:border-b-2">
              {said}
            </StatusLine>
          </div>
        </>
      }
      notice={stage.notice}
      scene={stage.scene}
      controls={stage.controls}
      summary={stage.summary}
      sheetOpen={evening.sheetOpen}
      onSheetOpen={evening.onSheetOpen}
      panel={
        <>
          {evening.about === undefined ? null : (
            <div className="mb-2 text-sm text-soft">{evening.about}</div>
          )}
          {stage.panel}
        </>
      }
    />
  );
}

/** What stands in the place of a drawing where a table is wanted. */
export function TableSpace({ children }: { children: ReactNode }) {
  return <div className="h-full overflow-y-auto bg-page p-4 pb-16 sm:p-6">{children}</div>;
}
