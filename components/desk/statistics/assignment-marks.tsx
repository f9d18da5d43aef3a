import Link from 'next/link';
import { Panel } from '@/components/ui/panel';
import type { AssignmentStatistics } from '@/lib/data/class-statistics';
import { routes } from '@/lib/routes';
import { MarksChart } from './marks-chart';
import { marksSentence } from './statistics-words';

/** How the marks of each assignment lie. */
export function AssignmentMarks({ assignments }: { assignments: readonly AssignmentStatistics[] }) {
  return (
    <div className="grid gap-4 lg:grid-cols-2 print:grid-cols-2">
      {assignments.map((assignment) => (
        <Panel
          key={assignment.id}
          level={4}
          title={
            <Link className="link" href={routes.teacher.assignment(assignment.id)}>
              {assignment.title}
            </Link>
          }
          className="keep-together"
        >
          <p className="mb-3 text-sm">{marksSentence(assignment)}</p>
          {assignment.marks.length === 0 ? null : (
            <MarksChart
              title={assignment.title}
              marks={assignment.marks}
              passMark={assignment.passMark}
            />
          )}
        </Panel>
      ))}
    </div>
  );
}
