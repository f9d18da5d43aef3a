import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ReportView } from '@/components/desk/print/report-view';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { getViewer } from '@/lib/auth/session';
import { getStudentReport } from '@/lib/data/student-report';
import { routes } from '@/lib/routes';

export const metadata: Metadata = { title: 'One student’s page' };

export default async function ReportPage({
  params,
  searchParams,
}: {
  params: Promise<{ studentId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const [{ studentId }, { marks }] = await Promise.all([params, searchParams]);
  const report = await getStudentReport(await getViewer(), studentId);
  if (report === null) notFound();
  const withMarks = marks !== 'no';
  const { teacher } = routes;
  return (
    <>
      <nav aria-label="Back" className="no-print mb-5 text-sm">
        <TextLink href={teacher.student(studentId)}>
          All of {report.student.displayName}’s work
        </TextLink>
        {' · '}
        <TextLink href={teacher.classPrint(report.student.classId)}>All printed things</TextLink>
      </nav>
      <div className="no-print mb-6 flex flex-wrap items-center gap-x-5 gap-y-2 border-y border-line py-2">
        <PrintButton />
        <TextLink href={teacher.studentReport(studentId, withMarks ? { marks: 'no' } : undefined)}>
          {withMarks ? 'Leave the marks out' : 'Put the marks in'}
        </TextLink>
        <p className="text-sm text-soft">
          It tells only what {report.student.displayName} may know too. Nothing on it is about
          anybody else.
        </p>
      </div>
      <ReportView report={report} withMarks={withMarks} />
    </>
  );
}
