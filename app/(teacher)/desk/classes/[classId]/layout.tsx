import type { ReactNode } from 'react';
import { ClassNav } from '@/components/desk/class-nav';
import { codeText, roleText } from '@/components/desk/class-text';
import { PageHeader } from '@/components/ui/page-header';
import { routes } from '@/lib/routes';
import { classOf } from './class-of';

/** The class's name and pages. What may be seen is decided where the data is read. */
export default async function ClassLayout({
  children,
  params,
}: {
  children: ReactNode;
  params: Promise<{ classId: string }>;
}) {
  const { details } = await classOf(params);
  const { id } = details;
  return (
    <>
      {/* A sheet of cards is cut up: it carries nothing but cards. */}
      <div className="print:[body:has([data-card-sheet])_&]:hidden">
        <PageHeader
          title={details.name}
          lead={
            <>
              Class code{' '}
              <span className="font-figures font-semibold text-ink">{codeText(details.code)}</span>
              {details.role === 'owner' ? '' : ` · you are ${roleText[details.role]}`}
              {details.isDemo ? ' · demonstration, left out of all statistics' : ''}
            </>
          }
          crumbs={[{ label: 'Desk', href: routes.teacher.desk() }]}
        />
      </div>
      <ClassNav
        groups={[
          [
            { href: routes.teacher.classLive(id), label: 'Live' },
            { href: routes.teacher.classGradebook(id), label: 'Gradebook' },
            { href: routes.teacher.classSkills(id), label: 'Skills' },
            { href: routes.teacher.classStatistics(id), label: 'Statistics' },
          ],
          [
            { href: routes.teacher.classAssignments(id), label: 'Assignments' },
            { href: routes.teacher.classSignOff(id), label: 'Sign-off' },
            { href: routes.teacher.classNight(id), label: 'Night' },
            { href: routes.teacher.classPrint(id), label: 'Print' },
          ],
          [
            { href: routes.teacher.classRoster(id), label: 'Roster' },
            { href: routes.teacher.classGroups(id), label: 'Groups' },
            { href: routes.teacher.classExports(id), label: 'Exports' },
            { href: routes.teacher.classSettings(id), label: 'Settings' },
          ],
        ]}
      />
      {children}
    </>
  );
}
