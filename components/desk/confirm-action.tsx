'use client';

import { useState, type ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import type { ButtonVariant } from '@/components/ui/button-look';
import { Dialog, DialogClose } from '@/components/ui/dialog';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import { SubmitButton } from '@/components/ui/submit-button';
import type { FormActionFunction } from './action-form';
import { useFormAction } from '../ui/use-form-action';

/** What is asked, and what is done when the answer is yes. */
type Question = {
  action: FormActionFunction;
  title: string;
  description: ReactNode;
  confirmLabel: string;
  busyLabel?: string;
};

/** Asks, then does; what the server says to it is shown where it was asked. */
export function ConfirmAction({
  children,
  variant = 'quiet',
  ...question
}: Question & { children: ReactNode; variant?: ButtonVariant }) {
  // As it was when the dialog opened: the page may change beneath it, and yes is said to what was read.
  const [asked, setAsked] = useState<Question | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const { title, description } = asked ?? question;
  return (
    <>
      <Dialog
        open={asked !== null}
        onOpenChange={(open) => {
          setAsked(open ? question : null);
          setSaid(null);
        }}
        trigger={<Button variant={variant}>{children}</Button>}
        title={title}
        description={description}
      >
        {asked === null ? null : (
          <ConfirmForm
            question={asked}
            variant={variant}
            onDone={(answer) => {
              setAsked(null);
              setSaid(answer);
            }}
          />
        )}
      </Dialog>
      <StatusLine className={said === null ? 'sr-only' : 'no-print'}>{said}</StatusLine>
    </>
  );
}

/** Lives as long as the dialog is open: an earlier refusal is not shown again. */
function ConfirmForm({
  question: { action, confirmLabel, busyLabel },
  variant,
  onDone,
}: {
  question: Question;
  variant: ButtonVariant;
  onDone: (said: string | null) => void;
}) {
  const { problem, send } = useFormAction(action, (answer) => {
    if (answer.problem === null) onDone(answer.said);
  });
  return (
    <form action={send} className="space-y-4">
      {problem === null ? null : <Notice tone="danger" live="alert" title={problem.message} />}
      <div className="flex flex-wrap justify-end gap-2">
        <DialogClose>
          <Button>Leave it</Button>
        </DialogClose>
        <SubmitButton variant={variant === 'danger' ? 'danger' : 'primary'} busyLabel={busyLabel}>
          {confirmLabel}
        </SubmitButton>
      </div>
    </form>
  );
}
