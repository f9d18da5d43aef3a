import { Field } from '@/components/ui/field';
import { TextArea } from '@/components/ui/text-input';
import { rowsOfTyped } from '@/lib/roster/list-check';
import { RowTable } from './row-table';

/** Names typed or pasted one to a line; only lines with something amiss are shown again. */
export function TypedWay({ text, onChange }: { text: string; onChange: (text: string) => void }) {
  const rows = rowsOfTyped(text);
  const wrong = rows.some((row) => row.problem !== null);
  return (
    <div className="space-y-4">
      <Field label="Names" hint="One to a line. Who is in the class already is not added again.">
        {(control) => (
          <TextArea
            {...control}
            rows={8}
            className="max-w-md"
            value={text}
            onChange={(event) => onChange(event.target.value)}
          />
        )}
      </Field>
      {wrong ? <RowTable rows={rows} source="these lines" onCorrect={null} /> : null}
    </div>
  );
}
