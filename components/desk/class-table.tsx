import Link from 'next/link';
import { zonedDayText } from '@/components/grading/zoned-time';
import { TableFrame } from '@/components/ui/table-frame';
import type { ClassSummary } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { codeText, roleText } from './class-text';

/** A teacher's classes, a row each; of archived ones also since when. */
export function ClassTable({
  caption,
  classes,
}: {
  caption: string;
  classes: readonly ClassSummary[];
}) {
  const archived = classes.some(({ archivedAt }) => archivedAt !== null);
  return (
    <TableFrame caption={caption} captionHidden tall>
      <thead>
        <tr>
          <th scope="col">Class</th>
          <th scope="col">{archived ? 'Archived on' : 'Code'}</th>
          <th scope="col" className="number">
            Students
          </th>
          <th scope="col" className="number">
            Assignments
          </th>
          <th scope="col">You are</th>
        </tr>
      </thead>
      <tbody>
        {classes.map((entry) => (
          <tr key={entry.id}>
            <th scope="row">
              <Link className="link text-base" href={routes.teacher.classGradebook(entry.id)}>
                {entry.name}
              </Link>
              {entry.isDemo ? (
                <span className="ms-2 border border-strong px-1.5 text-xs font-normal text-soft">
                  demonstration
                </span>
              ) : null}
            </th>
            <td className="font-figures whitespace-nowrap">
              {entry.archivedAt === null
                ? codeText(entry.code)
                : zonedDayText(new Date(entry.archivedAt), entry.timeZone)}
            </td>
            <td className="number">{entry.studentCount}</td>
            <td className="number">{entry.assignmentCount}</td>
            <td>{roleText[entry.role]}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
