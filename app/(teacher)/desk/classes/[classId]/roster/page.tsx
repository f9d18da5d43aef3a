import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { RosterImport } from '@/components/desk/roster-import/roster-import';
import { RosterTable } from '@/components/desk/roster-table';
import { LinkButton } from '@/components/ui/link-button';
import { Panel } from '@/components/ui/panel';
import { listRoster } from '@/lib/data/roster';
import { getRosterSource } from '@/lib/data/roster-import';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import {
  allowExtraAttempts,
  allowExtraTime,
  commitImport,
  markLeft,
  previewImport,
  remove,
  rename,
  takeBack,
} from './actions';

export const metadata: Metadata = { title: 'Roster' };

export default async function RosterPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach } = await classOf(params);
  const roster = await listRoster(viewer, details.id);
  if (roster === null) notFound();
  const here = roster.filter((row) => row.leftAt === null);
  const left = roster.length - here.length;
  const withoutCard = here.filter((row) => !row.hasCard).length;
  return (
    <div className="space-y-6">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <h2 className="text-xl font-semibold">
          Roster, {here.length} {here.length === 1 ? 'student' : 'students'}
          {left === 0 ? '' : ` and ${left} who left`}
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
                  markLeft: markLeft.bind(null, details.id),
                  allowExtraAttempts: allowExtraAttempts.bind(null, details.id),
                  allowExtraTime: allowExtraTime.bind(null, details.id),
                }
              : null
          }
          cardsHref={routes.teacher.classCards(details.id)}
        />
      )}
      {mayTeach ? (
        <Panel title="Add or update students">
          <RosterImport
            actions={{
              preview: previewImport.bind(null, details.id),
              commit: commitImport.bind(null, details.id),
              takeBack: takeBack.bind(null, details.id),
            }}
            className={details.name}
            rememberedId={await getRosterSource(viewer, details.id)}
            today={dayIn(details.timeZone)}
          />
        </Panel>
      ) : null}
    </div>
  );
}

/** Today as the class's wall calendar has it: "2026-11-26". */
const dayIn = (timeZone: string): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(new Date());
