'use client';

import { Button } from '@/components/ui/button';

/** What was just changed, and the way back from it. Stays mounted, so that it is read out. */
export function UndoLine({ said, onUndo }: { said: string | null; onUndo: () => void }) {
  return (
    <div role="status" aria-live="polite">
      {said === null ? null : (
        <div className="flex flex-wrap items-center gap-3 rounded-md border border-line bg-panel px-4 py-2">
          <p className="max-w-measure">{said}</p>
          <Button onClick={onUndo}>Undo this</Button>
        </div>
      )}
    </div>
  );
}
