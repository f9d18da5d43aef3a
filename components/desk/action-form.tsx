'use client';

import { ErrorSummary } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextArea, TextInput } from '@/components/ui/text-input';
import type { ButtonVariant } from '@/components/ui/button-look';
import { useFormAction, type FormActionFunction, type FormAnswer } from '../ui/use-form-action';

export type { FormAnswer, FormActionFunction };

export type FormFieldSpec = {
  name: string;
  label: string;
  hint?: string;
  type: 'text' | 'date' | 'time' | 'number' | 'note' | 'select';
  defaultValue?: string;
  options?: readonly { value: string; label: string }[];
  /** Known values to pick from while typing. */
  suggestions?: readonly string[];
  optional?: boolean;
};

/** A small form of a few fields: what was typed comes back when it is refused. */
export function ActionForm({
  idPrefix,
  action,
  fields,
  hidden = {},
  submitLabel,
  busyLabel,
  variant = 'quiet',
}: {
  /** Keeps ids apart where several forms share a page. */
  idPrefix: string;
  action: FormActionFunction;
  fields: readonly FormFieldSpec[];
  hidden?: Readonly<Record<string, string>>;
  submitLabel: string;
  busyLabel?: string;
  variant?: ButtonVariant;
}) {
  const { problem, said, kept, send } = useFormAction(action);
  const shownProblem =
    problem === null
      ? []
      : [
          problem.field === undefined
            ? problem
            : { ...problem, field: `${idPrefix}-${problem.field}` },
        ];
  return (
    <form action={send} noValidate className="flex max-w-md flex-col gap-4">
      <ErrorSummary problems={shownProblem} />
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {fields.map((field) => {
        const value = kept[field.name] ?? field.defaultValue ?? '';
        return (
          <Field
            key={field.name}
            id={`${idPrefix}-${field.name}`}
            label={field.label}
            hint={field.hint}
            optional={field.optional}
            error={problem?.field === field.name ? problem.message : null}
          >
            {(control) =>
              field.type === 'select' ? (
                // A remount shows what was chosen: the browser's reset does not know of it.
                <Select {...control} key={value} name={field.name} defaultValue={value}>
                  {(field.options ?? []).map((option) => (
                    <option key={option.value} value={option.value}>
                      {option.label}
                    </option>
                  ))}
                </Select>
              ) : field.type === 'note' ? (
                <TextArea
                  {...control}
                  key={value}
                  name={field.name}
                  rows={2}
                  defaultValue={value}
                  maxLength={1000}
                />
              ) : (
                <>
                  <TextInput
                    {...control}
                    key={value}
                    name={field.name}
                    type={field.type === 'number' ? 'text' : field.type}
                    inputMode={field.type === 'number' ? 'decimal' : undefined}
                    autoComplete="off"
                    list={field.suggestions === undefined ? undefined : `${control.id}-known`}
                    defaultValue={value}
                  />
                  {field.suggestions === undefined ? null : (
                    <datalist id={`${control.id}-known`}>
                      {field.suggestions.map((suggestion) => (
                        <option key={suggestion} value={suggestion} />
                      ))}
                    </datalist>
                  )}
                </>
              )
            }
          </Field>
        );
      })}
      <div className="flex flex-wrap items-center gap-3">
        <SubmitButton variant={variant} busyLabel={busyLabel}>
          {submitLabel}
        </SubmitButton>
        <StatusLine>{said}</StatusLine>
      </div>
    </form>
  );
}
