'use client';

import { Button } from '@/components/ui/button';
import { rehearsalStages } from '@/lib/rehearsal/stages';
import type { Evening } from './evening';
import { stageWords } from './stage-words';
import { stillToDo } from './stages-done';

/** What is left undone, and the end of the evening all the same. */
export function HandIn({ evening, onHandIn }: { evening: Evening; onHandIn: () => void }) {
  const { draft, variant, mode } = evening;
  const open = rehearsalStages.filter((stage) => stillToDo(draft, variant, stage) !== '');
  return (
    <div className="space-y-2 border-t border-line pt-3">
      {open.length === 0 ? null : (
        <p className="border-s-4 border-line ps-3 text-sm text-soft">
          Not finished: {open.map((stage) => stageWords[stage].short).join(', ')}. You can go back
          to each, or hand in the evening as it is.
        </p>
      )}
      <Button
        variant={open.length === 0 ? 'primary' : 'quiet'}
        size="large"
        className="w-full"
        onClick={onHandIn}
      >
        {mode === 'check' ? 'That was my evening' : 'How did the evening go?'}
      </Button>
    </div>
  );
}
