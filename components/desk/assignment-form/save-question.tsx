'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { Dialog, DialogClose } from '@/components/ui/dialog';
import type { SaveQuestion } from './form-actions';

/** What the server wants a yes to before it saves. Left unanswered, the focus goes to the due date. */
export function SaveQuestionDialog({
  question,
  onConfirm,
  onLeave,
}: {
  question: SaveQuestion | null;
  onConfirm: () => void;
  onLeave: () => void;
}) {
  const left = useRef(false);
  useEffect(() => {
    if (question !== null || !left.current) return;
    left.current = false;
    document.getElementById('policy.dueAt')?.focus();
  }, [question]);
  if (question === null) return null;
  return (
    <Dialog
      open
      onOpenChange={() => {
        left.current = true;
        onLeave();
      }}
      title={question.title}
      description={question.text}
    >
      <div className="flex flex-wrap justify-end gap-2">
        <DialogClose>
          <Button>Leave it</Button>
        </DialogClose>
        <Button variant="primary" onClick={onConfirm}>
          {question.confirmLabel}
        </Button>
      </div>
    </Dialog>
  );
}
