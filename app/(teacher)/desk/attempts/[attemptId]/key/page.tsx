import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { BestPairsTable, UsableStarsTable } from '@/components/desk/answer-key/answer-key-tables';
import { KeyPicture } from '@/components/desk/answer-key/key-picture';
import { SampleTasks } from '@/components/desk/answer-key/sample-tasks';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { getAttemptKey } from '@/lib/data/attempt-key';
import { routes } from '@/lib/routes';

export const metadata: Metadata = { title: 'The task and its key' };

/** What one student was asked, and what is right: of open attempts too, for the teacher at their side. */
export default async function AttemptKeyPage({
  params,
}: {
  params: Promise<{ attemptId: string }>;
}) {
  const attempt = await getAttemptKey(await getViewer(), (await params).attemptId);
  if (attempt === null) notFound();
  const { attemptId, title, studentName, studentId, isOpen, mode, attemptNumber, sky } = attempt;
  return (
    <>
      <PageHeader
        title={`${studentName}: the task and its key`}
        lead={`${title}, ${mode === 'check' ? `attempt ${String(attemptNumber)}` : 'practice'}, ${isOpen ? 'under way' : 'handed in'}. The key is ${studentName}’s own: others have other tasks.`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: studentName, href: routes.teacher.student(studentId) },
        ]}
        actions={
          <>
            {isOpen ? null : (
              <LinkButton href={routes.teacher.attempt(attemptId)}>The attempt</LinkButton>
            )}
            <PrintButton />
          </>
        }
      />
      <div className="space-y-6">
        <SampleTasks
          preview={attempt.task}
          answerKey={sky?.key ?? null}
          title="The task, by its best answer"
        />
        {sky === null ? null : (
          <>
            <p className="max-w-measure print:max-w-none text-soft">
              Picture and tables are of the whole sky of this task, also where a star is given or
              the mount proposes.
            </p>
            <div className="grid grid-cols-[minmax(0,1fr)] items-start gap-6 xl:grid-cols-[minmax(0,26rem)_minmax(0,1fr)] print:block print:space-y-4">
              <KeyPicture
                answerKey={sky.key}
                frame={sky.frame}
                scenario={sky.scenario}
                stars={skyPictureStars(loadCatalogue(), sky.frame)}
              />
              <BestPairsTable answerKey={sky.key} />
            </div>
            <UsableStarsTable answerKey={sky.key} />
          </>
        )}
      </div>
    </>
  );
}
