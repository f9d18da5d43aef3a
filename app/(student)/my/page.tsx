import type { Metadata } from 'next';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { SunCaution } from '@/components/ui/sun-caution';
import { getViewer } from '@/lib/auth/session';
import { loadKits } from '@/lib/content/sky-catalogue';
import { listStudentAssignments, type StudentAssignment } from '@/lib/data/attempts';
import { systemClock } from '@/lib/data/clock';
import { getMySkills } from '@/lib/data/skill-progress';
import { routes } from '@/lib/routes';
import { AssignmentCard } from './assignment-card';
import { hasToDo, nextStepOf, standingsOf } from './assignment-standing';
import { DueReviews } from './due-reviews';
import { PracticePanel } from './practice-panel';

export const metadata: Metadata = { title: 'My work' };

export default async function MyWorkPage() {
  const viewer = await getViewer();
  const [assignments, skills] = await Promise.all([
    listStudentAssignments(viewer),
    getMySkills(viewer),
  ]);
  const now = systemClock.now();
  const toDo = assignments.filter((assignment) => hasToDo(assignment, now));
  const others = assignments.filter((assignment) => !hasToDo(assignment, now));
  return (
    <>
      <PageHeader
        title={viewer.kind === 'anonymous' ? 'My work' : `Good to see you, ${viewer.displayName}`}
        lead={leadOf(toDo.length, assignments.length > 0)}
      />
      <div className="grid gap-10">
        <section aria-labelledby="to-do">
          <h2 id="to-do" className="mb-3 text-xl font-semibold">
            To do
          </h2>
          {toDo.length > 0 ? (
            <Cards assignments={toDo} now={now} />
          ) : (
            <NothingToDo
              anythingAtAll={assignments.length > 0}
              checkLeft={others.some((one) =>
                standingsOf(one).some((part) => nextStepOf(part, now).kind === 'start'),
              )}
            />
          )}
        </section>
        {skills === null ? null : <DueReviews skills={skills} now={now} />}
        <PracticePanel
          kits={loadKits().map(({ id, name }) => ({ id, name }))}
          variant={toDo.length > 0 ? 'quiet' : 'primary'}
        />
        {others.length === 0 ? null : (
          <section aria-labelledby="done">
            <h2 id="done" className="mb-3 text-xl font-semibold">
              Handed in or over
            </h2>
            <Cards assignments={others} now={now} />
          </section>
        )}
        <SunCaution short />
      </div>
    </>
  );
}

function leadOf(toDo: number, anythingAtAll: boolean): string | undefined {
  if (toDo === 0) return anythingAtAll ? 'Nothing must be done now.' : undefined;
  return toDo === 1
    ? 'One thing is waiting for you.'
    : `${String(toDo)} things are waiting for you.`;
}

function Cards({ assignments, now }: { assignments: readonly StudentAssignment[]; now: Date }) {
  return (
    <ul className="grid gap-4">
      {assignments.map((assignment) => (
        <li key={assignment.assignmentId}>
          <AssignmentCard assignment={assignment} now={now} />
        </li>
      ))}
    </ul>
  );
}

function NothingToDo({
  anythingAtAll,
  checkLeft,
}: {
  anythingAtAll: boolean;
  /** A check could be taken again. */
  checkLeft: boolean;
}) {
  return (
    <EmptyState
      title={anythingAtAll ? 'Nothing must be done now' : 'Your teacher has not set anything yet'}
      action={<LinkButton href={routes.lessons.all()}>Read a lesson</LinkButton>}
    >
      <p>
        {anythingAtAll
          ? `What you have handed in is below${checkLeft ? ', with what you may try again' : ''}. You may always practise and read the lessons.`
          : 'What your teacher sets will be here, with the time when it is due. Until then, practise as often as you like.'}
      </p>
    </EmptyState>
  );
}
