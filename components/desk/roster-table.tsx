import Link from 'next/link';
import { TableFrame } from '@/components/ui/table-frame';
import type { RosterRow } from '@/lib/data/roster';
import { routes } from '@/lib/routes';
import { StudentMenu, type StudentActions } from './student-menu';
import { zonedTimeText } from '@/components/grading/zoned-time';

function cardText({ leftAt, hasCard }: RosterRow) {
  if (leftAt !== null) return 'not in use';
  return hasCard ? 'made' : <span className="text-caution">not yet made</span>;
}

/** The class list: who has a card, who has been here; who has left comes last, in grey. */
export function RosterTable({
  roster,
  timeZone,
  className,
  actions,
  cardsHref,
}: {
  roster: readonly RosterRow[];
  timeZone: string;
  className: string;
  /** null for a viewer who only reads. */
  actions: StudentActions | null;
  cardsHref: string;
}) {
  return (
    <TableFrame
      caption={`Students of ${className}`}
      captionHidden
      stickyFirstColumn
      rows={roster.length}
    >
      <thead>
        <tr>
          <th scope="col">Student</th>
          <th scope="col" className="number">
            Card
          </th>
          <th scope="col">Sign-in card</th>
          <th scope="col">Last here</th>
          {actions === null ? null : (
            <>
              <th scope="col" className="number">
                Extra attempts
              </th>
              <th scope="col" className="no-print">
                Change
              </th>
            </>
          )}
        </tr>
      </thead>
      <tbody>
        {roster.map((row) => (
          <tr key={row.studentId} className={row.leftAt === null ? undefined : 'text-soft'}>
            <th scope="row">
              <Link className="link" href={routes.teacher.student(row.studentId)}>
                {row.displayName}
              </Link>
              {row.leftAt === null ? '' : ' (left)'}
            </th>
            <td className="number">{row.cardNumber}</td>
            <td>{cardText(row)}</td>
            <td className="whitespace-nowrap">
              {row.lastSeenAt === null ? (
                <span className="text-soft">not yet</span>
              ) : (
                zonedTimeText(row.lastSeenAt, timeZone)
              )}
            </td>
            {actions === null ? null : (
              <>
                <td className="number">
                  {row.extraAttempts === 0 ? (
                    <span className="text-soft">none</span>
                  ) : (
                    row.extraAttempts
                  )}
                </td>
                <td className="no-print">
                  <StudentMenu
                    student={row}
                    actions={actions}
                    cardHref={`${cardsHref}?student=${encodeURIComponent(row.studentId)}`}
                  />
                </td>
              </>
            )}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
