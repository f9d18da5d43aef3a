import type { ReactNode } from 'react';
import { markText } from './mark-text';

/** One part of a mark: what it is for, and what is to be said below it. */
export type MarksRow = {
  id: string;
  name: string;
  earned: number;
  possible: number;
  below?: ReactNode;
};

/** A mark, part by part. */
export function MarksTable({ rows }: { rows: readonly MarksRow[] }) {
  return (
    <div className="table-frame overflow-x-auto">
      <table>
        <caption className="sr-only">The mark, part by part</caption>
        <thead>
          <tr>
            <th scope="col">For</th>
            <th scope="col" className="number">
              Mark
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, earned, possible, below }) => (
            <tr key={id}>
              <th scope="row">
                {name}
                {below}
              </th>
              <td className="number">
                {markText(earned)} of {markText(possible)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
