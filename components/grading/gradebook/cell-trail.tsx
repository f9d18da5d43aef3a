import { TableFrame } from '@/components/ui/table-frame';
import type { TrailLine } from '@/lib/data/audit-trail';
import { zonedTimeText } from '../zoned-time';
import { trailWords } from './trail-words';

/** Everything that was ever decided about one cell, newest first; nothing is ever taken off it. */
export function CellTrail({ lines, timeZone }: { lines: readonly TrailLine[]; timeZone: string }) {
  if (lines.length === 0)
    return (
      <p className="text-sm text-soft">
        Nothing has been decided by hand. What the student did and what it was marked with stands
        above.
      </p>
    );
  return (
    <TableFrame caption="What was decided about this mark, newest first" captionHidden tall>
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Who</th>
          <th scope="col">What</th>
          <th scope="col">Before</th>
          <th scope="col">After</th>
          <th scope="col">Why</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => {
          const { what, before, after } = trailWords(line, timeZone);
          return (
            <tr key={line.id} className={line.undone ? 'text-soft' : undefined}>
              <td className="min-w-28">{zonedTimeText(line.at, timeZone)}</td>
              <td>{line.who ?? 'a teacher whose account is gone'}</td>
              <th scope="row">
                {what}
                {line.undone ? <span className="font-normal"> (undone later)</span> : null}
              </th>
              <td className="max-w-56 break-words">{before}</td>
              <td className="max-w-56 break-words">{after}</td>
              <td className="max-w-64 break-words">{line.reason ?? ''}</td>
            </tr>
          );
        })}
      </tbody>
    </TableFrame>
  );
}
