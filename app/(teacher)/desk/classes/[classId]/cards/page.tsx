import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { CardMaker } from '@/components/desk/cards/card-maker';
import { Notice } from '@/components/ui/notice';
import { listRoster } from '@/lib/data/roster';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import { makeCards } from './actions';

export const metadata: Metadata = { title: 'Sign-in cards' };

export default async function CardsPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  const [everybody, query] = await Promise.all([listRoster(viewer, details.id), searchParams]);
  if (everybody === null) notFound();
  const roster = everybody.filter((row) => row.leftAt === null);
  if (!mayTeach) {
    return (
      <Notice title="Cards are made by the teachers of the class">
        You have been asked to read along.
      </Notice>
    );
  }
  if (roster.length === 0) {
    return (
      <NoStudentsYet addAt={routes.teacher.classRoster(details.id)}>
        <p>A card belongs to a student: list the class first.</p>
      </NoStudentsYet>
    );
  }
  const asked = typeof query.student === 'string' ? query.student : null;
  return (
    <CardMaker
      students={roster.map(({ studentId, displayName, cardNumber, hasCard }) => ({
        studentId,
        displayName,
        cardNumber,
        hasCard,
      }))}
      chosenAtFirst={roster.some((row) => row.studentId === asked) ? asked : null}
      makeCards={makeCards.bind(null, details.id)}
    />
  );
}
