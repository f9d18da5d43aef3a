'use client';

import { useActionState, useState, type ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import type { ButtonVariant } from '@/components/ui/button-look';
import { Dialog, DialogClose } from '@/components/ui/dialog';
import { Notice } from '@/components/ui/notice';
import { SubmitButton } from '@/components/ui/submit-button';
import type { FormActionFunction } from './action-form';

/** Asks, then does; what the server says to it is shown where it was asked. */
export function ConfirmAction({
  action,
  children,
  variant = 'quiet',
  title,
  description,
  confirmLabel,
  busyLabel,
}: {
  action: FormActionFunction;
  children: ReactNode;
  variant?: ButtonVariant;
  title: string;
  description: ReactNode;
  confirmLabel: string;
  busyLabel?: string;
}) {
  const [open, setOpen] = useState(false);
  const [answer, send] = useActionState<Awaited<ReturnType<FormActionFunction>>, FormData>(
    async (before, formData) => {
      const next = await action(before, formData);
      if (next.problem === null) setOpen(false);
      return next;
    },
    { problem: null, said: null, kept: {} },
  );
  return (
    <Dialog
      open={open}
      onOpenChange={setOpen}
      trigger={<Button variant={variant}>{children}</Button>}
      title={title}
      description={description}
    >
      <form action={send} className="space-y-4">
        {answer.problem === null ? null : (
          <Notice tone="danger" live="alert" title={answer.problem.message} />
        )}
        <div className="flex flex-wrap justify-end gap-2">
          <DialogClose>
            <Button>Leave it</Button>
          </DialogClose>
          <SubmitButton variant={variant === 'danger' ? 'danger' : 'primary'} busyLabel={busyLabel}>
            {confirmLabel}
          </SubmitButton>
        </div>
      </form>
    </Dialog>
  );
}
