import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import {
  BestPairsTable,
  MarkNote,
  TemptingStarsTable,
  UsableStarsTable,
} from '@/components/desk/answer-key/answer-key-tables';
import { KeyPicture } from '@/components/desk/answer-key/key-picture';
import { keyWarnings } from '@/components/desk/answer-key/key-warnings';
import { SampleTasks } from '@/components/desk/answer-key/sample-tasks';
import { AssignmentSummary } from '@/components/desk/assignment-summary';
import { ConfirmAction } from '@/components/desk/confirm-action';
import { ProgressPanel } from '@/components/desk/progress-panel';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import { benchTexts } from '@/components/lab/bench/bench-texts';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { getAssignment, previewAnswerKey } from '@/lib/data/assignments';
import { getClass } from '@/lib/data/classes';
import { getGradebook } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import type { Lab } from '@/lib/variants/labs';
import { kitChoices, siteChoices } from '../../form-choices';
import { publish, release, removeAssignment } from './actions';

export const metadata: Metadata = { title: 'Assignment' };

const pairKeyLead =
  'For the moment of the setting itself; each student’s own moment lies within the window and is marked by its own key. “In the eyepiece” is the share of targets that a go-to would land inside the field (approximate).';
const keyLead: Readonly<Record<Exclude<Lab, BenchLab>, string>> = {
  'pick-the-pair': `${pairKeyLead} The mark is for choosing that pair with every look-alike named.`,
  'alignment-run': `${pairKeyLead} Where the stars are the student’s choice, the pair counts for a small part; each task’s telescope hides small errors of its own, and the samples tell what a perfect operator would get with them.`,
  'what-went-wrong':
    'Each student gets an evening and a fault of their own, drawn evenly among those that show under this sky. Below is one of each kind, as drawn for this page.',
  'lesson-questions':
    'Each student gets questions of their own on all these lessons, and others with each attempt; the mark is the mean of theirs. Below is a set on each lesson, as drawn for this page.',
};

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
  const [preview, details, gradebook] = await Promise.all([
    previewAnswerKey(viewer, assignmentId),
    getClass(viewer, assignment.classId),
    assignment.state === 'published' ? getGradebook(viewer, assignment.classId) : null,
  ]);
  if (preview === null || details === null) notFound();
  const { id, state, canEdit, policy } = assignment;
  const isDraft = state === 'draft';
  const attempts = assignment.attemptsUnderWay + assignment.attemptsSubmitted;
  const warnings = keyWarnings(preview, assignment.templates);
  const rows = (gradebook?.students ?? []).flatMap(({ id: studentId, displayName }) => {
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
              <LinkButton href={routes.teacher.editAssignment(id)}>Change</LinkButton>
            ) : null}
            <PrintButton>Print the key</PrintButton>
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
                description={`All ${details.studentCount} ${details.studentCount === 1 ? 'student' : 'students'} of ${details.name} will see it among their work. It can still be changed; attempts that have started by then stay as they are.`}
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
        <Panel title="Setting">
          <AssignmentSummary
            assignment={assignment}
            kitName={kitChoices().find((kit) => kit.id === assignment.kitId)?.name ?? null}
            siteName={siteChoices().find((site) => site.id === assignment.siteId)?.name ?? null}
          />
        </Panel>
        <section aria-labelledby="answer-key" className="space-y-5">
          <div>
            <h2 id="answer-key" className="text-xl font-semibold">
              Answer key
            </h2>
            <p className="max-w-measure print:max-w-none text-soft">
              {isBenchLab(preview.lab) ? benchTexts[preview.lab].keyLead : keyLead[preview.lab]}
            </p>
          </div>
          {preview.lab === 'what-went-wrong' ||
          preview.lab === 'lesson-questions' ||
          isBenchLab(preview.lab) ? null : (
            <>
              <div className="grid grid-cols-[minmax(0,1fr)] items-start gap-6 xl:grid-cols-[minmax(0,26rem)_minmax(0,1fr)] print:block print:space-y-4">
                <KeyPicture
                  answerKey={preview.key}
                  frame={preview.frame}
                  scenario={assignment.scenario}
                  stars={skyPictureStars(loadCatalogue(), preview.frame)}
                />
                <div className="space-y-3">
                  <BestPairsTable answerKey={preview.key} />
                  <MarkNote answerKey={preview.key} />
                </div>
              </div>
              <UsableStarsTable answerKey={preview.key} />
              <TemptingStarsTable answerKey={preview.key} />
            </>
          )}
          <SampleTasks preview={preview} />
        </section>
      </div>
    </>
  );
}
