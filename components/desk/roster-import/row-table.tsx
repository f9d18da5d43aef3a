import { TriangleAlert } from 'lucide-react';
import { TableFrame } from '@/components/ui/table-frame';
import { TextInput } from '@/components/ui/text-input';
import { rowProblemText, type ListRow } from '@/lib/roster/list-check';

/** The rows as they were read; those that are left out until mended say why. */
export function RowTable({
  rows,
  source,
  onCorrect,
}: {
  rows: readonly ListRow[];
  /** "class.csv, column Name": where the names stand. */
  source: string;
  /** null where the text itself is at hand to be changed. */
  onCorrect: ((rowNumber: number, name: string) => void) | null;
}) {
  const wrong = rows.filter((row) => row.problem !== null).length;
  return (
    <div className="space-y-2">
      <p role="status" className="font-semibold">
        {rows.length - wrong} {rows.length - wrong === 1 ? 'name' : 'names'} read
        {wrong === 0
          ? ''
          : `; ${wrong} ${wrong === 1 ? 'row is' : 'rows are'} left out until mended`}
      </p>
      <TableFrame caption={`Names from ${source}`} className="max-w-3xl">
        <thead>
          <tr>
            <th scope="col" className="number">
              Row
            </th>
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
                    {rowProblemText(row.problem)}
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
