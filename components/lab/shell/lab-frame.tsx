'use client';

import type { ReactNode } from 'react';
import { LabSheet } from './lab-sheet';

type LabFrameProps = {
  /** Above the scene: which way one looks at it. */
  top?: ReactNode;
  /** Below the scene's top, where something has to be said about it. */
  notice?: ReactNode;
  scene: ReactNode;
  /** Below the scene and always in reach: what one steers with. */
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
    <div className="relative flex h-[calc(100dvh-7rem-var(--offline-bar,0px))] min-h-[32rem] flex-col overflow-hidden lg:grid lg:h-[calc(100dvh-4.6rem-var(--offline-bar,0px))] lg:grid-cols-[minmax(0,1fr)_24rem]">
      <div className="flex min-h-0 flex-1 flex-col">
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
        {props.controls}
      </div>
      <LabSheet summary={props.summary} open={sheetOpen} onOpenChange={onSheetOpen}>
        {props.panel}
      </LabSheet>
    </div>
  );
}
