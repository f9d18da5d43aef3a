'use client';

import { useActionState } from 'react';
import { Field } from '@/components/ui/field';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextInput } from '@/components/ui/text-input';
import { signInWithPassword, type PasswordState } from '../actions';
import { fieldError, SignInProblem } from '../sign-in-problem';

const start: PasswordState = { problem: null, kept: { email: '' } };

export function PasswordForm() {
  const [{ problem, kept }, action] = useActionState(signInWithPassword, start);

  return (
    <form action={action} noValidate className="flex max-w-md flex-col gap-5">
      <SignInProblem problem={problem} title="That did not open">
        <p>Check the email and the password, capitals included, and try once more.</p>
      </SignInProblem>
      <Field id="email" label="Email" error={fieldError(problem, 'email')}>
        {(control) => (
          <TextInput
            {...control}
            name="email"
            type="email"
            autoComplete="username"
            autoCapitalize="none"
            spellCheck={false}
            required
            defaultValue={kept.email}
          />
        )}
      </Field>
      <Field id="password" label="Password" error={fieldError(problem, 'password')}>
        {(control) => (
          <TextInput
            {...control}
            name="password"
            type="password"
            autoComplete="current-password"
            required
          />
        )}
      </Field>
      <SubmitButton size="large" busyLabel="Opening" className="self-start">
        Sign in
      </SubmitButton>
    </form>
  );
}
