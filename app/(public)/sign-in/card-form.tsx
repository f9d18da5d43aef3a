'use client';

import { useReachingAction } from '@/components/ui/use-form-action';
import { choiceLook } from '@/components/ui/checkbox';
import { Field } from '@/components/ui/field';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextInput } from '@/components/ui/text-input';
import { signInWithCard, type CardState } from './actions';
import { fieldError, SignInProblem } from './sign-in-problem';

const start: CardState = { problem: null, kept: { classCode: '', cardNumber: '' } };

/** Computers are shared: nothing typed here is offered to the browser to remember. */
const unremembered = {
  autoComplete: 'off',
  autoCorrect: 'off',
  autoCapitalize: 'none',
  spellCheck: false,
} as const;

export function CardForm() {
  const { answer, problem, typed, send } = useReachingAction(signInWithCard, start);
  const { kept } = answer;

  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-5">
      <SignInProblem problem={problem} title="This card did not open">
        <p>
          Look at the class code, the number and the three words once more. If it still does not
          open, ask your teacher to reprint your card: the new one has new words, and your work is
          kept.
        </p>
      </SignInProblem>
      <Field
        id="classCode"
        label="Class code"
        hint="Eight letters and numbers. Capitals, spaces and dashes do not matter."
        error={fieldError(problem, 'classCode')}
      >
        {(control) => (
          <TextInput
            {...control}
            {...unremembered}
            name="classCode"
            required
            defaultValue={typed['classCode'] ?? kept.classCode}
            className="font-figures max-w-56 tracking-[0.08em] uppercase"
          />
        )}
      </Field>
      <Field id="cardNumber" label="Card number" error={fieldError(problem, 'cardNumber')}>
        {(control) => (
          <TextInput
            {...control}
            {...unremembered}
            name="cardNumber"
            required
            inputMode="numeric"
            defaultValue={typed['cardNumber'] ?? kept.cardNumber}
            className="font-figures max-w-24"
          />
        )}
      </Field>
      <div className="words-field flex flex-col gap-1.5">
        <Field
          id="words"
          label="Three words"
          hint="In the order of the card."
          error={fieldError(problem, 'words')}
        >
          {(control) => (
            <TextInput
              {...control}
              {...unremembered}
              name="words"
              required
              defaultValue={typed['words']}
              className="masked"
            />
          )}
        </Field>
        {/* Unmasks by style alone, so that it works before the script has arrived. */}
        <label className="inline-flex min-h-(--target-small) items-center gap-2 self-start text-sm">
          <input type="checkbox" className={`${choiceLook} tick-box mt-0 rounded-md`} />
          Show the words while I type
        </label>
      </div>
      <SubmitButton size="large" busyLabel="Opening" className="self-start">
        Sign in
      </SubmitButton>
    </form>
  );
}
