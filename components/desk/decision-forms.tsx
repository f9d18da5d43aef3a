import { ActionForm, type FormActionFunction } from './action-form';

/**
 * Whom and what a decision is about; `timeZone` is the clock that due times are typed on, `openedOn` when
 * what the forms change had been changed last as they were opened.
 */
export type DecisionTarget = {
  studentId: string;
  assignmentId: string;
  timeZone: string;
  openedOn: { override: string | null; due: string | null };
};

export type DecisionActions = {
  mark: FormActionFunction;
  excuse: FormActionFunction;
  due: FormActionFunction;
};

const note = {
  name: 'note',
  label: 'Why',
  hint: 'Kept with the change and in the student’s file. The student’s pages do not show it.',
  type: 'note',
} as const;

/** What only the teacher decides: a mark of one's own, an excuse, more time. Each with a note. */
export function DecisionForms({
  idPrefix,
  actions,
  excused,
  timeZone,
}: {
  idPrefix: string;
  actions: DecisionActions;
  excused: boolean;
  timeZone: string;
}) {
  return (
    <details className="no-print rounded-md border border-line bg-panel px-4 py-3">
      <summary className="font-semibold">Own mark, excuse, more time</summary>
      <div className="mt-4 grid gap-8 lg:grid-cols-3">
        <div>
          <ActionForm
            idPrefix={`${idPrefix}-mark`}
            action={actions.mark}
            fields={[
              {
                name: 'mark',
                label: 'Your mark, 0 to 100',
                hint: 'Stands above the computed one. Empty takes it back.',
                type: 'number',
              },
              note,
            ]}
            submitLabel="Set the mark"
            busyLabel="Setting"
          />
        </div>
        <div>
          <ActionForm
            idPrefix={`${idPrefix}-excuse`}
            action={actions.excuse}
            fields={[
              {
                name: 'excused',
                label: 'Does it count?',
                type: 'select',
                defaultValue: excused ? 'yes' : 'no',
                options: [
                  { value: 'yes', label: 'Excuse: it does not count' },
                  { value: 'no', label: 'It counts' },
                ],
              },
              note,
            ]}
            submitLabel="Save"
          />
        </div>
        <div>
          <ActionForm
            idPrefix={`${idPrefix}-due`}
            action={actions.due}
            fields={[
              {
                name: 'date',
                label: 'Own due date',
                hint: 'Both empty: the class’s due time holds.',
                type: 'date',
                optional: true,
              },
              {
                name: 'time',
                label: 'Own due time',
                hint: `On the clock of ${timeZone}.`,
                type: 'time',
                optional: true,
              },
              note,
            ]}
            submitLabel="Set the due time"
            busyLabel="Setting"
          />
        </div>
      </div>
    </details>
  );
}
