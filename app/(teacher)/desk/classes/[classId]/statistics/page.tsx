import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { z } from 'zod';
import { AssignmentMarks } from '@/components/desk/statistics/assignment-marks';
import { IdeasTable } from '@/components/desk/statistics/ideas-table';
import { PartFiguresPanel } from '@/components/desk/statistics/part-figures';
import { QuestionAnswers } from '@/components/desk/statistics/question-answers';
import { inOrder, orderWords, questionOrders } from '@/components/desk/statistics/question-order';
import { QuestionsTable } from '@/components/desk/statistics/questions-table';
import { StatisticsSection } from '@/components/desk/statistics/statistics-section';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PrintButton } from '@/components/ui/print-button';
import { getClassStatistics } from '@/lib/data/class-statistics';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Statistics' };

const querySchema = z.object({ order: z.enum(questionOrders).catch('trouble') });

export default async function StatisticsPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  const statistics = await getClassStatistics(viewer, details.id);
  if (statistics === null) notFound();
  const { order } = querySchema.parse(await searchParams);
  const { assignments, questions, ideas, students } = statistics;
  if (assignments.length === 0 && questions.length === 0) {
    return (
      <EmptyState
        title="Nothing to reckon with yet"
        action={
          mayTeach ? (
            <LinkButton variant="primary" href={routes.teacher.newAssignment(details.id)}>
              New assignment
            </LinkButton>
          ) : undefined
        }
      >
        <p>
          Once somebody answers a question of a lesson or hands in an assignment, this page says
          what was hard, what was misunderstood, and how far the marks are to be relied on.
        </p>
      </EmptyState>
    );
  }
  const ordered = inOrder(questions, order);
  const missed = ordered.filter(({ kinds }) => kinds.length > 0);
  return (
    <div className="space-y-10">
      <div className="space-y-3">
        <div className="flex flex-wrap items-end justify-between gap-3">
          <h2 className="text-xl font-semibold">Statistics</h2>
          <PrintButton />
        </div>
        <p className="max-w-measure text-soft">
          The {students.length === 1 ? 'one student' : `${String(students.length)} students`} of
          this class; who has left is in no figure. Marks are those that count in the gradebook.
          Everything else is of first attempts and first answers, since later ones know the
          feedback. With fewer than ten students there are counts and no shares; figures that need
          thirty are greyed below that.
        </p>
        <p className="no-print max-w-measure text-sm text-soft">
          On paper, the tables behind the charts and the answers stand open; who misunderstood what
          is named only where you have opened it.
        </p>
        {statistics.isDemo ? (
          <Notice title="The students of this class are invented">
            So are these figures. They stand on this page and go nowhere else.
          </Notice>
        ) : null}
      </div>

      <StatisticsSection
        id="misunderstandings"
        title="What is misunderstood here"
        lead="Ideas that wrong answers and slips gave away, by how many students. One answer is enough to be counted, and may have been put right since."
      >
        {ideas.length === 0 ? (
          <p className="text-soft">No answer so far gave a known misunderstanding away.</p>
        ) : (
          <IdeasTable ideas={ideas} students={students} />
        )}
      </StatisticsSection>

      <StatisticsSection
        id="marks"
        title="Marks, assignment by assignment"
        lead="What counts of everybody who has a whole mark: after lateness, the attempts’ rule and your own changes."
      >
        {assignments.length === 0 ? (
          <p className="text-soft">Nothing is assigned yet.</p>
        ) : (
          <AssignmentMarks assignments={assignments} />
        )}
      </StatisticsSection>

      {assignments.length === 0 ? null : (
        <StatisticsSection
          id="parts"
          title="Labs, criterion by criterion"
          lead="Each student had a task of their own; what they share is what was marked."
        >
          <div className="grid items-start gap-4 xl:grid-cols-2">
            {assignments.flatMap((assignment) =>
              assignment.parts.map((part) => (
                <PartFiguresPanel
                  key={part.partId}
                  assignment={assignment}
                  part={part}
                  students={students}
                />
              )),
            )}
          </div>
        </StatisticsSection>
      )}

      <StatisticsSection
        id="questions"
        title="Questions of the lessons"
        lead="No two students are asked quite the same: numbers and words differ. So a line is not one question but all that are about one thing, of assigned sets and practice alike; each student counts once in it, by the first answer. “The rest” is the student’s mean over everything else they were asked."
      >
        {questions.length === 0 ? (
          <p className="text-soft">Nobody has answered a question yet.</p>
        ) : (
          <div className="space-y-4">
            <p className="no-print flex flex-wrap gap-x-4 gap-y-1 text-sm">
              {questionOrders.map((one) => (
                <Link
                  key={one}
                  aria-current={one === order ? 'true' : undefined}
                  className="link inline-flex min-h-(--target-small) items-center aria-[current]:font-semibold aria-[current]:text-ink aria-[current]:no-underline"
                  href={`${routes.teacher.classStatistics(details.id, { order: one })}#questions`}
                >
                  {orderWords[one]}
                </Link>
              ))}
            </p>
            <QuestionsTable questions={ordered} />
            {missed.length === 0 ? null : (
              <>
                <h4 className="text-base font-semibold">What was answered instead</h4>
                <QuestionAnswers questions={missed} />
              </>
            )}
          </div>
        )}
      </StatisticsSection>
    </div>
  );
}
