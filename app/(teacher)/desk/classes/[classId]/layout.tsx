import type { ReactNode } from 'react';
import { ClassNav } from '@/components/desk/class-nav';
import { codeText, roleText } from '@/components/desk/class-text';
import { zonedDayText } from '@/components/grading/zoned-time';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import type { ClassDetails } from '@/lib/data/classes';
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
  const { details, mayOwn } = await classOf(params);
  const { id, role, archivedAt } = details;
  return (
    <>
      {/* A sheet of cards is cut up: it carries nothing but cards. On a phone, a page that is used
          outside keeps the class's name and no more. */}
      <div className="max-sm:[body:has([data-compact-head])_&]:[&_header>nav]:hidden max-sm:[body:has([data-compact-head])_&]:[&_h1+div]:hidden max-sm:[body:has([data-compact-head])_&]:[&_.bench-edge]:hidden print:[body:has([data-card-sheet])_&]:hidden max-sm:[&_h1]:text-xl max-sm:[&_header]:mb-2 max-sm:[&_header_nav]:mb-0">
        <PageHeader
          title={details.name}
          lead={
            <>
              Class code{' '}
              <span className="font-figures font-semibold text-ink">{codeText(details.code)}</span>
              {role === 'owner' ? '' : ` · you are ${roleText[role]}`}
              {details.isDemo ? ' · an invented class' : ''}
            </>
          }
          crumbs={role === 'cover' ? [] : [{ label: 'Desk', href: routes.teacher.desk() }]}
        />
        {archivedAt === null ? null : (
          <Notice
            className="mb-6"
            title={`Archived on ${zonedDayText(new Date(archivedAt), details.timeZone)}`}
          >
            <p>
              Everything can be read and taken out, nothing changes any more, and its students
              cannot sign in.{' '}
              {mayOwn
                ? 'You can take it back in the settings.'
                : 'Its owner can take it back in the settings.'}
            </p>
          </Notice>
        )}
      </div>
      <ClassNav groups={role === 'cover' ? coverPages(id) : pagesFor(id, role)} />
      {children}
    </>
  );
}

const pagesFor = (id: string, role: ClassDetails['role']) => [
  [
    { href: routes.teacher.classLive(id), label: 'Live' },
    { href: routes.teacher.classGradebook(id), label: 'Gradebook' },
    { href: routes.teacher.classSkills(id), label: 'Skills' },
    { href: routes.teacher.classStatistics(id), label: 'Statistics' },
  ],
  [
    { href: routes.teacher.classAssignments(id), label: 'Assignments' },
    { href: routes.teacher.classSignOff(id), label: 'Sign-off' },
    { href: routes.teacher.classNight(id), label: 'Night plan' },
    { href: routes.teacher.classPrint(id), label: 'Print' },
  ],
  [
    { href: routes.teacher.classRoster(id), label: 'Roster' },
    { href: routes.teacher.classGroups(id), label: 'Groups' },
    // Files and settings are the owner's and the teachers' alone.
    ...(role === 'observer'
      ? []
      : [
          { href: routes.teacher.classExports(id), label: 'Exports' },
          { href: routes.teacher.classSettings(id), label: 'Settings' },
        ]),
  ],
];

/** What a substitute needs for one lesson, and nothing that would open on an empty page. */
const coverPages = (id: string) => [
  [
    { href: routes.teacher.classLive(id), label: 'Live' },
    { href: routes.teacher.classLetIn(id), label: 'Let a student in' },
  ],
  [
    { href: routes.teacher.classAssignments(id), label: 'Assignments' },
    { href: routes.teacher.classGradebook(id), label: 'Gradebook' },
    { href: routes.teacher.classGroups(id), label: 'Groups' },
    { href: routes.teacher.classNight(id), label: 'Night' },
  ],
];
