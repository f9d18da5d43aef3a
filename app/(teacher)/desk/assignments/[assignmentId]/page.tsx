import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { keyWarnings, type KeyWarning } from '@/components/desk/answer-key/key-warnings';
import { isUnderSky, PartKey } from '@/components/desk/answer-key/part-key';
import { AssignmentSummary } from '@/components/desk/assignment-summary';
import { partDraftName } from '@/components/desk/assignment-form/part-words';
import { ConfirmAction } from '@/components/desk/confirm-action';
import { attemptsInRules, givenText } from '@/components/desk/given-text';
import { ProgressPanel } from '@/components/desk/progress-panel';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import { labText } from '@/components/grading/template-text';
import { lessonName } from '@/lib/wording/lesson-name';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import {
  getAssignment,
  previewAnswerKey,
  type AnswerKeyPreview,
  type AssignmentPartDetails,
} from '@/lib/data/assignments';
import { listExtensions } from '@/lib/data/assignment-extensions';
import { getClass } from '@/lib/data/classes';
import { getGradebook } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { kitChoices, siteChoices } from '../../form-choices';
import { ExtensionsPanel } from './extensions-panel';
import { publish, release, removeAssignment } from './actions';

export const metadata: Metadata = { title: 'Assignment' };

const attemptsInWords = (count: number): string =>
  count === 1 ? 'One attempt' : `${String(count)} attempts`;

export default async function AssignmentPage({
  params,
}: {
  params: Promise<{ assignmentId: string }>;
}) {
  const { assignmentId } = await params;
  const viewer = await getViewer();
  const assignment = await getAssignment(viewer, assignmentId);
  if (assignment === null) notFound();
  const [previews, details, gradebook, extensions] = await Promise.all([
    previewAnswerKey(viewer, assignmentId),
    getClass(viewer, assignment.classId),
    assignment.state === 'published' ? getGradebook(viewer, assignment.classId) : null,
    listExtensions(viewer, assignmentId),
  ]);
  if (details === null) notFound();
  const { id, state, canEdit, policy } = assignment;
  const isDraft = state === 'draft';
  const given = givenText({
    parts: assignment.parts.map(partDraftName),
    lessons: assignment.lessons.map(lessonName),
    className: details.name,
    studentCount: details.studentCount,
    due:
      policy.dueAt === null
        ? null
        : `${zonedTimeText(policy.dueAt, assignment.dueTimeZone)} (${assignment.dueTimeZone})`,
    attempts: attemptsInRules(policy.attemptsAllowed, policy.counting),
  });
  const attempts = assignment.attemptsUnderWay + assignment.attemptsSubmitted;
  const warnings = warningsOf(previews ?? [], assignment.parts);
  const rows = (gradebook?.students ?? []).flatMap(({ id: studentId, displayName, left }) => {
    if (left) return [];
    const cell = gradebook?.cells.find(
      (entry) => entry.studentId === studentId && entry.assignmentId === id,
    );
    return cell === undefined ? [] : [{ id: studentId, displayName, cell }];
  });
  return (
    <>
      <PageHeader
        title={assignment.title}
        lead={
          isDraft
            ? 'Draft: students do not see it yet. Look at the answer key, then publish.'
            : `Published${assignment.publishedAt === null ? '' : ` ${zonedTimeText(assignment.publishedAt, details.timeZone)}`}. ${attempts === 0 ? 'Nobody has started yet.' : `${attemptsInWords(assignment.attemptsSubmitted)} handed in, ${String(assignment.attemptsUnderWay)} under way.`}`
        }
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: details.name, href: routes.teacher.classGradebook(details.id) },
          { label: 'Assignments', href: routes.teacher.classAssignments(details.id) },
        ]}
        actions={
          <>
            {canEdit ? (
              <>
                <LinkButton href={routes.teacher.editAssignment(id)}>Change</LinkButton>
                <LinkButton href={routes.teacher.copyAssignment(id)}>Copy…</LinkButton>
                {assignment.attemptsSubmitted === 0 ? null : (
                  <LinkButton href={routes.teacher.regrade(id)}>Mark again…</LinkButton>
                )}
              </>
            ) : null}
            <LinkButton href={routes.teacher.assignmentPreview(id)}>As a student</LinkButton>
            {previews === null ? null : <PrintButton>Print the key</PrintButton>}
            {canEdit ? (
              <ConfirmAction
                action={removeAssignment.bind(null, id)}
                variant="danger"
                title={`Delete “${assignment.title}”?`}
                description={
                  attempts === 0
                    ? 'It goes for good. No student has worked on it.'
                    : `It goes for good, with ${attempts} ${attempts === 1 ? 'attempt' : 'attempts'} and the marks for ${attempts === 1 ? 'it' : 'them'}. Nothing brings them back.`
                }
                confirmLabel="Delete the assignment"
                busyLabel="Deleting"
              >
                Delete…
              </ConfirmAction>
            ) : null}
            {canEdit && isDraft ? (
              <ConfirmAction
                action={publish.bind(null, id)}
                variant="primary"
                title="Publish it?"
                description={`${given} They see it among their work at once. It can still be changed; attempts that have started by then stay as they are.`}
                confirmLabel="Publish"
                busyLabel="Publishing"
              >
                Publish…
              </ConfirmAction>
            ) : null}
            {canEdit &&
            !isDraft &&
            policy.feedback === 'when-released' &&
            assignment.feedbackReleasedAt === null ? (
              <ConfirmAction
                action={release.bind(null, id)}
                variant="primary"
                title="Release marks and feedback?"
                description="Every student who has handed in sees the mark and the explanation. What has been seen cannot be taken back."
                confirmLabel="Release"
                busyLabel="Releasing"
              >
                Release feedback…
              </ConfirmAction>
            ) : null}
          </>
        }
      />
      <div className="space-y-8">
        {assignment.feedbackReleasedAt === null ? null : (
          <p className="text-soft">
            Feedback was released {zonedTimeText(assignment.feedbackReleasedAt, details.timeZone)}.
          </p>
        )}
        {isDraft ? (
          <p className="max-w-measure">
            <span className="font-semibold">When you publish: </span>
            {given}
          </p>
        ) : null}
        {isDraft && details.studentCount === 0 ? (
          <Notice tone="caution" title="The class has no students yet">
            <p>Publish when you like; the roster can follow.</p>
          </Notice>
        ) : null}
        {warnings.map((warning) => (
          <Notice key={warning.title} tone="caution" title={warning.title}>
            <p>{warning.text}</p>
          </Notice>
        ))}
        {isDraft || rows.length === 0 ? null : (
          <ProgressPanel rows={rows} underWay={assignment.attemptsUnderWay} />
        )}
        {extensions === null ? null : (
          <ExtensionsPanel
            assignmentId={id}
            timeZone={assignment.dueTimeZone}
            extensions={extensions}
          />
        )}
        <Panel title="Setting">
          <AssignmentSummary
            assignment={assignment}
            kitName={kitChoices().find((kit) => kit.id === assignment.kitId)?.name ?? null}
            siteName={siteChoices().find((site) => site.id === assignment.siteId)?.name ?? null}
          />
        </Panel>
        {previews === null ? null : (
          <section aria-labelledby="answer-key" className="space-y-5">
            <div>
              <h2 id="answer-key" className="text-xl font-semibold">
                Answer key
              </h2>
              {previews.length === 1 ? null : (
                <p className="max-w-measure text-soft">One for each part, in their order.</p>
              )}
            </div>
            {previews.map((preview, index) => (
              <PartKey
                key={preview.partId}
                preview={preview}
                scenario={assignment.scenario}
                title={
                  previews.length === 1
                    ? null
                    : `Part ${String(index + 1)}: ${labText[preview.lab].name}`
                }
                stars={
                  index === previews.findIndex(({ lab }) => isUnderSky(lab))
                    ? skyPictureStars(loadCatalogue(), preview.frame)
                    : null
                }
              />
            ))}
          </section>
        )}
      </div>
    </>
  );
}

/** What there is to say of each part; of the sky, which they share, once. */
function warningsOf(
  previews: readonly AnswerKeyPreview[],
  parts: readonly AssignmentPartDetails[],
): KeyWarning[] {
  const all = previews.flatMap((preview) =>
    keyWarnings(preview, parts.find(({ id }) => id === preview.partId)?.templates ?? []),
  );
  return all.filter(
    ({ title }, index) => all.findIndex((warning) => warning.title === title) === index,
  );
}
