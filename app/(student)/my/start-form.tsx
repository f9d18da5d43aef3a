'use client';

import type { ReactNode } from 'react';
import { useReachingAction } from '@/components/ui/use-form-action';
import { FieldError } from '@/components/ui/field';
import { SubmitButton } from '@/components/ui/submit-button';
import type { ButtonVariant } from '@/components/ui/button-look';
import type { StartAction } from './start-state';

type StartFormProps = {
  action: StartAction;
  /** Sent along: which assignment, which telescope. */
  values?: Readonly<Record<string, string>>;
  label: string;
  /** Said after the label, for a reader alone. */
  said?: ReactNode;
  variant?: ButtonVariant;
  /** Fields that the student fills in, before the button. */
  children?: ReactNode;
};

/** A button that starts an attempt, with the reason beside it when that is refused. */
export function StartForm({ action, values = {}, label, said, variant, children }: StartFormProps) {
  const { problem, send } = useReachingAction(action, { problem: null });
  return (
    <form action={send} className="flex flex-wrap items-end gap-3">
      {Object.entries(values).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {children}
      <SubmitButton variant={variant ?? 'primary'} busyLabel="Making a sky …">
        {label}
        {said}
      </SubmitButton>
      {problem === null ? null : (
        <div role="alert" className="basis-full">
          <FieldError id={`start-${label.replaceAll(/\W+/g, '-')}`}>
            {typeof problem === 'string' ? problem : problem.message}
          </FieldError>
        </div>
      )}
    </form>
  );
}
