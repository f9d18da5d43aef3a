'use client';

import { useReachingAction } from '@/components/ui/use-form-action';
import { ErrorSummary } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextInput } from '@/components/ui/text-input';
import type { NewTeacherState } from './new-teacher-actions';

type NewTeacherFormProps = {
  action: (before: NewTeacherState, formData: FormData) => Promise<NewTeacherState>;
  /** From the invitation's address; without it the token is asked for. */
  token?: string;
};

export function NewTeacherForm({ action, token }: NewTeacherFormProps) {
  const { answer, problem, typed, send } = useReachingAction(action, {
    problem: null,
    kept: { token: token ?? '', displayName: '', email: '' },
  });
  const { kept } = answer;
  const error = (field: string) => (problem?.field === field ? problem.message : null);
  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-5">
      <ErrorSummary problems={problem === null ? [] : [problem]} />
      {token === undefined ? (
        <Field
          id="token"
          label="One-time token"
          hint="The start command shows it where Duskbench was started. It works once."
          error={error('token')}
        >
          {(control) => (
            <TextInput
              {...control}
              name="token"
              required
              autoComplete="off"
              autoCapitalize="none"
              spellCheck={false}
              defaultValue={typed['token'] ?? kept.token}
              className="font-figures"
            />
          )}
        </Field>
      ) : (
        <input type="hidden" name="token" value={token} />
      )}
      <Field
        id="displayName"
        label="Your name"
        hint="As your students and colleagues are to read it."
        error={error('displayName')}
      >
        {(control) => (
          <TextInput
            {...control}
            name="displayName"
            autoComplete="name"
            required
            defaultValue={typed['displayName'] ?? kept.displayName}
          />
        )}
      </Field>
      <Field
        id="email"
        label="Email"
        hint="Only for signing in: Duskbench sends no mail."
        error={error('email')}
      >
        {(control) => (
          <TextInput
            {...control}
            name="email"
            type="email"
            autoComplete="username"
            autoCapitalize="none"
            spellCheck={false}
            required
            defaultValue={typed['email'] ?? kept.email}
          />
        )}
      </Field>
      <Field
        id="password"
        label="Password"
        hint="Twelve characters or more. A short sentence is easy to remember and hard to guess."
        error={error('password')}
      >
        {(control) => (
          <TextInput
            {...control}
            name="password"
            type="password"
            autoComplete="new-password"
            required
            defaultValue={typed['password']}
          />
        )}
      </Field>
      <SubmitButton size="large" busyLabel="Making the account" className="self-start">
        Make the account
      </SubmitButton>
    </form>
  );
}
