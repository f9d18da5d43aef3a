'use client';

import { Button } from '@/components/ui/button';
import { fieldsOfEntry, formEntries, type FormEntry } from '@/lib/clock/mount-form';
import {
  emptyFormDraft,
  type FormDraft,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import { formAsItStands, openRows } from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import { rowNames, rowText } from './clock-words';
import type { ClockViewProps } from './clock-view';
import { RowFields } from './row-fields';

/** The form of the mount: rows to fill in, rows that stand, and in a form to check rows to cross out. */
export function MountFormRows({ variant, draft, change }: ClockViewProps) {
  const open = openRows(variant, draft);
  const form = formAsItStands(variant, draft);
  const toCheck = variant.template === 'check-the-form';

  const crossOut = (row: FormEntry): void => {
    const out = draft.flagged.includes(row);
    change(
      {
        ...draft,
        flagged: out ? draft.flagged.filter((one) => one !== row) : [...draft.flagged, row],
        // What was entered over a row that is right after all goes with the line through it.
        form: { ...draft.form, ...pick(emptyFormDraft, row) },
      },
      out
        ? `${rowNames[row]} stands again.`
        : `${rowNames[row]} is crossed out. Enter what is right.`,
    );
  };

  return (
    <div className="rounded-md border border-strong bg-sunken">
      <h3 className="border-b border-strong px-3 py-1.5 font-semibold">The mount asks</h3>
      {formEntries.map((row) => (
        <fieldset key={row} className="border-b border-line px-3 py-2 last:border-b-0">
          <legend className="sr-only">{rowNames[row]}</legend>
          <div className="flex flex-wrap items-center justify-between gap-2">
            <p aria-hidden="true" className="font-semibold">
              {rowNames[row]}
            </p>
            {open.includes(row) && !toCheck ? null : (
              <p
                className={`font-figures ${draft.flagged.includes(row) ? 'text-soft line-through' : ''}`}
              >
                {draft.flagged.includes(row) ? (
                  <span className="sr-only">crossed out: </span>
                ) : null}
                {rowText(
                  row,
                  draft.flagged.includes(row) ? { ...emptyFormDraft, ...variant.given } : form,
                )}
              </p>
            )}
            {toCheck ? (
              <Button
                aria-pressed={draft.flagged.includes(row)}
                aria-label={`${rowNames[row]} is wrong`}
                onClick={() => {
                  crossOut(row);
                }}
              >
                {draft.flagged.includes(row) ? 'It stands' : 'Wrong'}
              </Button>
            ) : null}
          </div>
          {open.includes(row) ? (
            <div className="mt-1 flex flex-wrap items-end gap-2">
              <RowFields
                row={row}
                form={form}
                onChange={(changes) => {
                  change({ ...draft, form: { ...draft.form, ...changes } });
                }}
              />
            </div>
          ) : null}
        </fieldset>
      ))}
    </div>
  );
}

const pick = (form: FormDraft, row: FormEntry): Partial<FormDraft> =>
  Object.fromEntries(fieldsOfEntry[row].map((field) => [field, form[field]]));
