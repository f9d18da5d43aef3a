'use client';

import { useState } from 'react';
import { ErrorSummary } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextArea } from '@/components/ui/text-input';
import type { FormActionFunction } from './action-form';
import { useFormAction } from '../ui/use-form-action';

/** What can be commented on, with what is written there already. */
export type CommentPlace = {
  /** The criterion's name; empty: the whole. */
  id: string;
  name: string;
  text: string;
  /** When that was last changed, UTC, ISO 8601; empty: nothing is written there. */
  changedAt: string;
};

/** Changes what is written in one place; what was typed for another waits until it is chosen again. */
export function CommentForm({
  places,
  action,
}: {
  places: readonly CommentPlace[];
  action: FormActionFunction;
}) {
  const [chosen, choose] = useState('');
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const place = places.find(({ id }) => id === chosen);
  // What was said of one text is not said of the next one, typed or chosen.
  const [changedSince, setChangedSince] = useState(false);
  const { problem, said, send } = useFormAction(action, (answer) => {
    setChangedSince(false);
    // From here on the field shows what stands there, also when a colleague changes it.
    if (answer.problem === null)
      setTyped((all) => Object.fromEntries(Object.entries(all).filter(([id]) => id !== chosen)));
  });
  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-4">
      <ErrorSummary
        problems={
          problem === null
            ? []
            : [
                problem.field === undefined
                  ? problem
                  : { ...problem, field: `comment-${problem.field}` },
              ]
        }
      />
      <input type="hidden" name="criterion" value={chosen} />
      <input type="hidden" name="openedOn" value={place?.changedAt ?? ''} />
      <Field
        id="comment-criterion"
        label="On"
        error={problem?.field === 'criterion' ? problem.message : null}
      >
        {(control) => (
          <Select
            {...control}
            value={chosen}
            onChange={({ currentTarget }) => {
              choose(currentTarget.value);
              setChangedSince(true);
            }}
          >
            {places.map(({ id, name, changedAt }) => (
              <option key={id} value={id}>
                {changedAt === '' ? name : `${name} (written)`}
              </option>
            ))}
          </Select>
        )}
      </Field>
      <Field
        id="comment-text"
        label="Comment"
        hint="The student reads it with the result. Empty takes away what is written there."
        error={problem?.field === 'text' ? problem.message : null}
      >
        {(control) => (
          <TextArea
            {...control}
            name="text"
            rows={3}
            maxLength={2000}
            value={typed[chosen] ?? place?.text ?? ''}
            onChange={({ currentTarget }) => {
              const { value } = currentTarget;
              setTyped((all) => ({ ...all, [chosen]: value }));
              setChangedSince(true);
            }}
          />
        )}
      </Field>
      <div className="flex flex-wrap items-center gap-3">
        <SubmitButton>Save the comment</SubmitButton>
        <StatusLine>{changedSince ? null : said}</StatusLine>
      </div>
    </form>
  );
}
