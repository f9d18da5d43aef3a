'use client';

import type { ReactNode } from 'react';
import { LabSheet } from './lab-sheet';

type LabFrameProps = {
  /** Above the scene: which way one looks at it. */
  top?: ReactNode;
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

/** A lab's workbench: the scene takes the space; the panel stands beside it, on a phone in a sheet. */
export function LabFrame(props: LabFrameProps) {
  const { sheetOpen, onSheetOpen } = props;
  return (
    <div className="relative flex h-[calc(100dvh-7rem-var(--offline-bar,0px))] min-h-[32rem] flex-col overflow-hidden lg:grid lg:h-[calc(100dvh-4.6rem-var(--offline-bar,0px))] lg:grid-cols-[minmax(0,1fr)_24rem] lg:grid-rows-[minmax(0,1fr)_auto]">
      {/* On a phone the sheet lies over the scene, and over nothing else. */}
      <div className="relative flex min-h-0 flex-1 flex-col lg:contents">
        <div className="flex min-h-0 flex-1 flex-col lg:col-start-1 lg:row-span-2 lg:row-start-1">
          {props.top}
          {props.notice}
          <div
            className="relative min-h-0 flex-1"
            // On a phone the sheet makes way for the scene as soon as the scene is touched.
            onPointerDownCapture={() => {
              onSheetOpen(false);
            }}
          >
            {props.scene}
          </div>
        </div>
        <LabSheet summary={props.summary} open={sheetOpen} onOpenChange={onSheetOpen}>
          {props.panel}
        </LabSheet>
      </div>
      {props.controls === undefined ? null : (
        <div className="lg:col-start-2 lg:row-start-2">{props.controls}</div>
      )}
    </div>
  );
}
