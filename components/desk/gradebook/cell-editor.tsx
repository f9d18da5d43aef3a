'use client';

import { useEffect } from 'react';
import { ActionForm, type FormActionFunction } from '../action-form';
import { Dialog } from '@/components/ui/dialog';
import { gradebookStateText } from '@/components/grading/gradebook/gradebook-state-text';
import type { GridCell, GridColumn, GridRow } from './grid-rows';

/** The cell that a digit was typed on, and the digit. */
export type EditedCell = {
  row: GridRow;
  column: GridColumn;
  cell: GridCell;
  digit: string;
  from: HTMLElement;
};

const idPrefix = 'cell-editor';

/** A mark of the teacher's own, begun by typing on a cell: Enter saves, Escape leaves. */
export function CellEditor({
  edited: { row, column, cell, digit, from },
  action,
  onClose,
}: {
  edited: EditedCell;
  action: FormActionFunction;
  /** With what the server said to a mark that was sent; null when it was left. */
  onClose: (said: string | null) => void;
}) {
  return (
    <Dialog
      open
      onOpenChange={(open) => {
        if (!open) onClose(null);
      }}
      title={`${row.name}: ${column.title}`}
      description={`Now: ${`${cell.mark} ${gradebookStateText[cell.state].word}`.trim()}. Your mark stands above the computed one, which is kept.`}
    >
      <FocusMark back={from} />
      <ActionForm
        idPrefix={idPrefix}
        action={async (before, formData) => {
          const next = await action(before, formData);
          if (next.problem === null) onClose(next.said);
          return next;
        }}
        fields={[
          {
            name: 'mark',
            label: 'Your mark, 0 to 100',
            hint: 'Empty takes it back.',
            type: 'number',
            defaultValue: digit,
          },
          { name: 'note', label: 'Why', hint: 'Kept with the change.', type: 'text' },
        ]}
        submitLabel="Set the mark"
        busyLabel="Setting"
        variant="primary"
      />
    </Dialog>
  );
}

/**
 * The caret goes behind the digit that was typed, once the dialog has taken the focus; afterwards the
 * reader is back on the cell, once the dialog has let go of it.
 */
function FocusMark({ back }: { back: HTMLElement }) {
  useEffect(
    () => () => {
      setTimeout(() => {
        back.focus();
      }, 0);
    },
    [back],
  );
  useEffect(() => {
    const timer = setTimeout(() => {
      const field = document.getElementById(`${idPrefix}-mark`);
      if (!(field instanceof HTMLInputElement)) return;
      field.focus();
      field.setSelectionRange(field.value.length, field.value.length);
    }, 0);
    return () => {
      clearTimeout(timer);
    };
  }, []);
  return null;
}
