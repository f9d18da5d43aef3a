'use client';

import { ErrorSummary } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextInput } from '@/components/ui/text-input';
import type { FormAnswer, FormActionFunction } from '@/components/desk/action-form';
import { useReachingAction } from '@/components/ui/use-form-action';

const untouched: FormAnswer = { problem: null, said: null, kept: {} };

/** Both fields come back empty whatever the server answers: a password is never sent back to a page. */
export function ChangePasswordForm({ action }: { action: FormActionFunction }) {
  const { answer, problem, typed, send } = useReachingAction(action, untouched);
  const said = problem === null ? answer.said : null;
  const errorOf = (field: string) => (problem?.field === field ? problem.message : null);
  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-4">
      <ErrorSummary problems={problem === null ? [] : [problem]} />
      <Field id="oldPassword" label="Password until now" error={errorOf('oldPassword')}>
        {(control) => (
          <TextInput
            {...control}
            name="oldPassword"
            type="password"
            autoComplete="current-password"
            defaultValue={typed['oldPassword']}
          />
        )}
      </Field>
      <Field
        id="newPassword"
        label="New password"
        hint="At least 12 characters: a short sentence is easy to remember."
        error={errorOf('newPassword')}
      >
        {(control) => (
          <TextInput
            {...control}
            name="newPassword"
            type="password"
            autoComplete="new-password"
            defaultValue={typed['newPassword']}
          />
        )}
      </Field>
      <div className="flex flex-wrap items-center gap-3">
        <SubmitButton variant="quiet" busyLabel="Changing…">
          Change the password
        </SubmitButton>
        <StatusLine>{said}</StatusLine>
      </div>
    </form>
  );
}
