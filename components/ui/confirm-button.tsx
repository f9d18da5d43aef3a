'use client';

import { useState, type ReactNode } from 'react';
import { Button } from './button';
import type { ButtonVariant } from './button-look';
import { Dialog, DialogClose } from './dialog';
import { SubmitButton } from './submit-button';

type ConfirmButtonProps = {
  /** On the button that opens the question. */
  children: ReactNode;
  variant?: ButtonVariant;
  title: string;
  /** What will happen, and what cannot be undone. */
  description: ReactNode;
  /** On the button that does it: the deed itself, such as "Delete the class". */
  confirmLabel: string;
  busyLabel?: string;
  cancelLabel?: string;
  danger?: boolean;
  action: (formData: FormData) => Promise<void> | void;
  /** Hidden values to send along. */
  fields?: Readonly<Record<string, string>>;
  /** Something to fill in inside the question, such as a note. */
  extra?: ReactNode;
};

/** Asks before it does something that is hard to take back. */
export function ConfirmButton({
  children,
  variant,
  title,
  description,
  confirmLabel,
  busyLabel,
  cancelLabel = 'Leave it',
  danger = false,
  action,
  fields = {},
  extra,
}: ConfirmButtonProps) {
  const [open, setOpen] = useState(false);
  return (
    <Dialog
      open={open}
      onOpenChange={setOpen}
      trigger={<Button variant={variant ?? (danger ? 'danger' : 'quiet')}>{children}</Button>}
      title={title}
      description={description}
    >
      <form
        action={async (formData) => {
          await action(formData);
          setOpen(false);
        }}
        className="space-y-4"
      >
        {Object.entries(fields).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        {extra}
        <div className="flex flex-wrap justify-end gap-2">
          <DialogClose>
            <Button>{cancelLabel}</Button>
          </DialogClose>
          <SubmitButton variant={danger ? 'danger' : 'primary'} busyLabel={busyLabel}>
            {confirmLabel}
          </SubmitButton>
        </div>
      </form>
    </Dialog>
  );
}
