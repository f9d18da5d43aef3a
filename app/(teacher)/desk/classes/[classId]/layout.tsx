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
        entries={[
          { href: routes.teacher.classGradebook(id), label: 'Gradebook' },
          { href: routes.teacher.classSkills(id), label: 'Skills' },
          { href: routes.teacher.classAssignments(id), label: 'Assignments' },
          { href: routes.teacher.classNight(id), label: 'Night' },
          { href: routes.teacher.classRoster(id), label: 'Roster' },
          { href: routes.teacher.classCards(id), label: 'Cards' },
          { href: routes.teacher.classSettings(id), label: 'Settings' },
        ]}
      />
      {children}
    </>
  );
}
