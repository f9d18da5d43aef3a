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
  /** null where the text itself is at hand to be changed; then sound rows are not shown again. */
  onCorrect: ((rowNumber: number, name: string) => void) | null;
}) {
  const faulty = rows.filter((row) => row.problem !== null);
  const wrong = faulty.length;
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
          </tr>
        </thead>
        <tbody>
          {(onCorrect === null ? faulty : rows).map((row) => {
            const saysId = row.problem === null ? undefined : `row-${row.rowNumber}-says`;
            return (
              <tr key={row.rowNumber}>
                <td className="number">{row.rowNumber}</td>
                <td className="space-y-1">
                  {onCorrect === null ? (
                    row.typed
                  ) : (
                    <TextInput
                      aria-label={`Name in row ${row.rowNumber}`}
                      aria-describedby={saysId}
                      aria-invalid={row.problem !== null || undefined}
                      className="max-w-md"
                      value={row.typed}
                      onChange={(event) => onCorrect(row.rowNumber, event.target.value)}
                    />
                  )}
                  {row.problem === null ? null : (
                    <span id={saysId} className="flex items-start gap-1.5 text-danger">
                      <TriangleAlert aria-hidden="true" className="mt-0.5 size-4 shrink-0" />
                      {rowProblemText(row.problem)}
                    </span>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </TableFrame>
    </div>
  );
}
