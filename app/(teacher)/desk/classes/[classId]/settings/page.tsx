import type { Metadata } from 'next';
import { Notice } from '@/components/ui/notice';
import { listCoverLinks } from '@/lib/data/cover';
import { listMembers } from '@/lib/data/members';
import { listClassInvitations } from '@/lib/data/open-invitations';
import { classOf } from '../class-of';
import { ClassSection } from './class-section';
import { CoverSection } from './cover-section';
import { ArchiveSection, DeleteSection, RetentionSection } from './end-sections';
import { LeaveClass, PeopleSection } from './people-section';
import { SessionSection } from './session-section';

export const metadata: Metadata = { title: 'Class settings' };

/** In the order a teacher would look for things; an archived class shows only what still holds. */
export default async function SettingsPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach, mayTakeOut, mayOwn } = await classOf(params);
  if (!mayTakeOut) {
    return (
      <Notice title="Settings are kept by the teachers of the class">
        <p>You have been asked to read along.</p>
        {details.role === 'observer' && details.archivedAt === null ? (
          <LeaveClass classId={details.id} name={details.name} />
        ) : null}
      </Notice>
    );
  }
  const [members, invitations, links] = await Promise.all([
    listMembers(viewer, details.id),
    listClassInvitations(viewer, details.id),
    listCoverLinks(viewer, details.id),
  ]);
  return (
    <div>
      {mayTeach ? <ClassSection details={details} /> : null}
      <PeopleSection details={details} members={members ?? []} invitations={invitations ?? []} />
      {mayTeach ? (
        <>
          <CoverSection details={details} links={links ?? []} />
          <SessionSection details={details} />
        </>
      ) : null}
      {mayOwn ? (
        <>
          <RetentionSection details={details} />
          <ArchiveSection details={details} />
          <DeleteSection details={details} />
        </>
      ) : null}
    </div>
  );
}
