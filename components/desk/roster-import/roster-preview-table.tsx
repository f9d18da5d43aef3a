import { TriangleAlert } from 'lucide-react';
import { TableFrame } from '@/components/ui/table-frame';
import { TextInput } from '@/components/ui/text-input';
import { nameProblemText, type PreviewRow } from './roster-preview';

/** What will be added, and which rows will not, each with its reason. */
export function RosterPreview({
  rows,
  onCorrect,
}: {
  rows: readonly PreviewRow[];
  /** null where the text itself is at hand to be changed. */
  onCorrect: ((rowNumber: number, name: string) => void) | null;
}) {
  const wrong = rows.filter((row) => row.problem !== null).length;
  return (
    <div className="space-y-2">
      <p role="status" className="font-semibold">
        {rows.length - wrong} to add
        {wrong === 0
          ? ''
          : `; ${wrong} ${wrong === 1 ? 'row is' : 'rows are'} left out until mended`}
      </p>
      <TableFrame caption="Preview of the students to add" captionHidden className="max-w-3xl">
        <thead>
          <tr>
            <th scope="col">Row</th>
            <th scope="col">Name to show</th>
            <th scope="col">Check</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.rowNumber}>
              <td className="number">{row.rowNumber}</td>
              <td>
                {onCorrect === null ? (
                  row.name
                ) : (
                  <TextInput
                    aria-label={`Name in row ${row.rowNumber}`}
                    aria-invalid={row.problem !== null || undefined}
                    className="min-w-40"
                    value={row.typed}
                    onChange={(event) => onCorrect(row.rowNumber, event.target.value)}
                  />
                )}
              </td>
              <td className={row.problem === null ? 'text-soft' : 'text-danger'}>
                {row.problem === null ? (
                  'fine'
                ) : (
                  <span className="flex items-start gap-1.5">
                    <TriangleAlert aria-hidden="true" className="mt-0.5 size-4 shrink-0" />
                    {nameProblemText(row.problem)}
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </TableFrame>
    </div>
  );
}
