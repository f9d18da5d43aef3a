import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { RosterImport } from '@/components/desk/roster-import/roster-import';
import { RosterTable } from '@/components/desk/roster-table';
import { LinkButton } from '@/components/ui/link-button';
import { Panel } from '@/components/ui/panel';
import { listRoster } from '@/lib/data/roster';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import { addToRoster, allowExtraAttempts, allowExtraTime, remove, rename } from './actions';

export const metadata: Metadata = { title: 'Roster' };

export default async function RosterPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach } = await classOf(params);
  const roster = await listRoster(viewer, details.id);
  if (roster === null) notFound();
  const withoutCard = roster.filter((row) => !row.hasCard).length;
  return (
    <div className="space-y-6">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <h2 className="text-xl font-semibold">
          Roster, {roster.length} {roster.length === 1 ? 'student' : 'students'}
        </h2>
        {mayTeach && withoutCard > 0 ? (
          <LinkButton href={routes.teacher.classCards(details.id)}>
            {withoutCard} {withoutCard === 1 ? 'has' : 'have'} no card yet: make{' '}
            {withoutCard === 1 ? 'it' : 'them'}
          </LinkButton>
        ) : null}
      </div>
      {roster.length === 0 ? null : (
        <RosterTable
          roster={roster}
          timeZone={details.timeZone}
          className={details.name}
          actions={
            mayTeach
              ? {
                  rename: rename.bind(null, details.id),
                  remove: remove.bind(null, details.id),
                  allowExtraAttempts: allowExtraAttempts.bind(null, details.id),
                  allowExtraTime: allowExtraTime.bind(null, details.id),
                }
              : null
          }
          cardsHref={routes.teacher.classCards(details.id)}
        />
      )}
      {mayTeach ? (
        <Panel title="Add students">
          <RosterImport
            existingNames={roster.map((row) => row.displayName)}
            addStudents={addToRoster.bind(null, details.id)}
          />
        </Panel>
      ) : null}
    </div>
  );
}
