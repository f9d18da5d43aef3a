'use client';

import { useReachingAction } from '@/components/ui/use-form-action';
import { Field } from '@/components/ui/field';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextInput } from '@/components/ui/text-input';
import { signInWithPassword, type PasswordState } from '../actions';
import { fieldError, SignInProblem } from '../sign-in-problem';

const start: PasswordState = { problem: null, kept: { email: '' } };

export function PasswordForm() {
  const { answer, problem, typed, send } = useReachingAction(signInWithPassword, start);

  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-5">
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
            defaultValue={typed['email'] ?? answer.kept.email}
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
            defaultValue={typed['password']}
          />
        )}
      </Field>
      <SubmitButton size="large" busyLabel="Opening" className="self-start">
        Sign in
      </SubmitButton>
    </form>
  );
}
