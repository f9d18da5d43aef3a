import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { RegradeForm, type RegradeRow } from '@/components/desk/regrade-form';
import { criterionName } from '@/app/criterion-names';
import { markText } from '@/components/grading/mark-text';
import { labText } from '@/components/grading/template-text';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { getViewer } from '@/lib/auth/session';
import { previewRegrade, type RegradePreview } from '@/lib/data/regrade';
import { routes } from '@/lib/routes';
import { takeOver } from './actions';

export const metadata: Metadata = { title: 'Mark again' };

type RegradePageProps = { params: Promise<{ assignmentId: string }> };

export default async function RegradePage({ params }: RegradePageProps) {
  const { assignmentId } = await params;
  const preview = await previewRegrade(await getViewer(), assignmentId);
  if (preview === null) notFound();
  const { assignment, replayed, changes, refused } = preview;
  return (
    <>
      <PageHeader
        title={`Mark again: ${assignment.title}`}
        lead="All work that was handed in, marked once more by today’s rules. Nothing changes until you say so."
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          {
            label: assignment.className,
            href: routes.teacher.classGradebook(assignment.classId),
          },
          { label: assignment.title, href: routes.teacher.assignment(assignmentId) },
        ]}
      />
      <div className="space-y-6">
        <Panel title="What would change">
          <div className="space-y-4">
            <p className="max-w-measure">
              {replayed === 0
                ? 'Nothing has been handed in yet.'
                : outcome(replayed, changes.length)}
            </p>
            {changes.length === 0 ? null : (
              <p className="max-w-measure text-sm text-soft">
                What rises is ticked. What would fall is not: tick it only where the old mark was
                wrong. Marks set by hand stand above either. The old marks are kept, and each change
                can be undone from the gradebook.
              </p>
            )}
            <RegradeForm rows={changes.map(rowOf)} action={takeOver.bind(null, assignmentId)} />
          </div>
        </Panel>
        {refused.length === 0 ? null : (
          <Notice tone="caution" title="Some work could not be marked again: its mark stays">
            <ul className="list-disc ps-5">
              {refused.map(({ attemptId, displayName, attemptNumber, message }) => (
                <li key={attemptId}>
                  {displayName}, attempt {attemptNumber}: {message}
                </li>
              ))}
            </ul>
          </Notice>
        )}
      </div>
    </>
  );
}

/** How much was marked again, and how much of it came out otherwise. */
function outcome(replayed: number, changes: number): string {
  const work =
    replayed === 1
      ? 'One piece of work was marked again'
      : `${String(replayed)} pieces of work were marked again`;
  if (changes === 0) return `Nothing would change. ${work}, and every mark came out as it stands.`;
  return `${work}; ${changes === 1 ? 'one comes' : `${String(changes)} come`} out otherwise.`;
}

type Change = RegradePreview['changes'][number];

const facts = ({ total, gateFailed, graderVersion }: Change['now']): string =>
  `${markText(total)}${gateFailed ? ', safety gate failed' : ''} (grader ${String(graderVersion)})`;

const rowOf = (change: Change): RegradeRow => ({
  attemptId: change.attemptId,
  whose: `${change.displayName}, ${labText[change.lab].name}, attempt ${String(change.attemptNumber)}`,
  before: change.old === null ? 'no mark' : facts(change.old),
  after: facts(change.now),
  why:
    change.criteria.length === 0
      ? 'the mark as a whole'
      : change.criteria
          .map(
            ({ id, old, now, possible }) =>
              `${criterionName(change.lab, id)}: ${old === null ? '–' : markText(old)} → ${now === null ? '–' : markText(now)} of ${markText(possible)}`,
          )
          .join('; '),
  lowers: change.kind === 'lowered',
  note: change.markByHand === null ? '' : `Your own mark of ${markText(change.markByHand)} stands.`,
});
