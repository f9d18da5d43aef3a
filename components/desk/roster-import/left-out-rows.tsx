import { TableFrame } from '@/components/ui/table-frame';
import type { LeftOutRow } from '@/lib/roster/list-check';

/** So many are seen at a glance; more fold away, with their number on the fold. */
const mostShownOpen = 5;

/** Each row of the list that is not imported, by file and row, and why. Nothing where all are. */
export function LeftOutRows({ source, rows }: { source: string; rows: readonly LeftOutRow[] }) {
  if (rows.length === 0) return null;
  const count = rows.reduce((sum, row) => sum + row.lastRowNumber - row.rowNumber + 1, 0);
  return (
    <details
      open={rows.length <= mostShownOpen}
      className="max-w-3xl rounded-md border border-line bg-panel px-4 py-3"
    >
      <summary className="font-semibold">
        {count} {count === 1 ? 'row is' : 'rows are'} left out{' '}
        <span className="font-normal text-soft">
          (to take {count === 1 ? 'it' : 'them'}, go back and mend {count === 1 ? 'it' : 'them'})
        </span>
      </summary>
      <TableFrame caption={`Left out of ${source}`} className="mt-3">
        <thead>
          <tr>
            <th scope="col" className="number">
              Row
            </th>
            <th scope="col">What stands there</th>
            <th scope="col">Why it is left out</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ rowNumber, lastRowNumber, typed, why }) => (
            <tr key={rowNumber}>
              <th scope="row" className="number">
                {rowNumber === lastRowNumber
                  ? rowNumber
                  : `${String(rowNumber)}–${String(lastRowNumber)}`}
              </th>
              <td className="break-words">
                {typed === '' ? <span className="text-soft">nothing</span> : typed}
              </td>
              <td>{why}</td>
            </tr>
          ))}
        </tbody>
      </TableFrame>
    </details>
  );
}
