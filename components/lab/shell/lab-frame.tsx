'use client';

import type { DragEvent, ReactNode } from 'react';
import { StatusLine } from '@/components/ui/status-line';
import { LabSheet } from './lab-sheet';

type LabFrameProps = {
  /** Above the scene: which way one looks at it. */
  top?: ReactNode;
  /** The one polite line that tells what is going on: beside the top, on a phone below it. */
  status?: string;
  /** Below the scene's top, where something has to be said about it. */
  notice?: ReactNode;
  scene: ReactNode;
  /** What one steers with, always in reach: below the panel, on a phone at the lower edge. */
  controls?: ReactNode;
  /** The panel folded to one line. */
  summary: string;
  sheetOpen: boolean;
  onSheetOpen: (open: boolean) => void;
  panel: ReactNode;
};

/**
 * A lab's workbench: the scene takes the space; the panel stands beside it, on a phone in a sheet
 * between scene and controls, which folds to one line. Nothing lies over anything else. It fills the
 * window below the page's header (`.lab-frame` in globals.css).
 */
export function LabFrame(props: LabFrameProps) {
  return (
    <div className="lab-frame flex min-h-[32rem] flex-1 flex-col overflow-hidden lg:grid lg:grid-cols-[minmax(0,1fr)_24rem] lg:grid-rows-[minmax(0,1fr)_auto]">
      <div className="flex min-h-0 flex-1 flex-col lg:contents">
        <div className="flex min-h-0 flex-1 flex-col lg:col-start-1 lg:row-span-2 lg:row-start-1">
          <Top {...props} />
          {props.notice}
          <div className="lab-scene relative min-h-0 flex-1" onDragStartCapture={dragNoText}>
            {props.scene}
          </div>
        </div>
        <LabSheet summary={props.summary} open={props.sheetOpen} onOpenChange={props.onSheetOpen}>
          {props.panel}
        </LabSheet>
      </div>
      {props.controls === undefined ? null : (
        <div className="lg:col-start-2 lg:row-start-2" onDragStartCapture={dragNoText}>
          {props.controls}
        </div>
      )}
    </div>
  );
}

/**
 * Where text is selected, here or elsewhere, the browser would begin to drag that text and take the
 * pointer away from what the hand turns.
 */
function dragNoText(event: DragEvent): void {
  event.preventDefault();
}

/**
 * With nothing to say the status takes no room; it stays mounted, so that what follows is read out. With
 * much to say it takes no more than its lines, three on a phone: a scene that moved while something is dragged on it would
 * put it elsewhere.
 */
function Top({ top, status }: Pick<LabFrameProps, 'top' | 'status'>) {
  if (status === undefined) return top;
  return (
    <div className="flex flex-col lg:flex-row">
      {top}
      <StatusLine className="h-[4.6rem] overflow-hidden border-b border-line bg-panel px-4 py-1 leading-snug empty:h-0 empty:min-h-0 empty:border-b-0 empty:py-0 lg:h-auto lg:max-h-[2.9rem] lg:flex-1 lg:border-b-2 lg:border-strong lg:empty:h-auto lg:empty:border-b-2">
        {status}
      </StatusLine>
    </div>
  );
}
