'use client';

import { ChevronDown, ChevronUp } from 'lucide-react';
import type { ReactNode } from 'react';

type LabSheetProps = {
  /** One line: the state when folded. */
  summary: string;
  open: boolean;
  onOpenChange: (open: boolean) => void;
  children: ReactNode;
};

/** The panel: beside the scene on a wide screen; on a phone a sheet below it, and never over it. */
export function LabSheet({ summary, open, onOpenChange, children }: LabSheetProps) {
  return (
    <aside
      aria-label="Task and answer"
      className="flex max-h-[46%] shrink-0 flex-col border-t-4 border-accent bg-panel text-ink lg:col-start-2 lg:row-start-1 lg:max-h-none lg:min-h-0 lg:border-s-2 lg:border-t-0 lg:border-s-strong"
    >
      <button
        type="button"
        aria-expanded={open}
        aria-controls="lab-sheet"
        onClick={() => {
          onOpenChange(!open);
        }}
        className="flex min-h-12 w-full items-center justify-between gap-3 px-4 text-start font-semibold lg:hidden"
      >
        <span className="truncate">{summary}</span>
        {open ? (
          <ChevronDown aria-hidden="true" className="size-5 shrink-0" />
        ) : (
          <ChevronUp aria-hidden="true" className="size-5 shrink-0" />
        )}
        <span className="sr-only">{open ? 'Fold the panel' : 'Open the panel'}</span>
      </button>
      <div
        id="lab-sheet"
        className={`relative min-h-0 flex-1 overflow-y-auto overscroll-contain px-4 pb-4 lg:block lg:p-5 ${open ? '' : 'hidden'}`}
      >
        {children}
      </div>
    </aside>
  );
}
