import { ConfirmAction } from '@/components/desk/confirm-action';
import { InviteTeacher } from '@/components/desk/invite-teacher';
import { InvitationTable } from '@/components/desk/people/invitation-table';
import { MemberTable } from '@/components/desk/people/member-table';
import type { ClassDetails } from '@/lib/data/classes';
import type { ClassMember } from '@/lib/data/members';
import type { OpenInvitation } from '@/lib/data/open-invitations';
import {
  giveRole,
  handOver,
  inviteInto,
  leaveClass,
  takeBackLink,
  takeOut,
} from './people-actions';
import { SettingsSection } from './settings-section';

/** Who teaches here, who looks on, and how they come and go. */
export function PeopleSection({
  details,
  members,
  invitations,
}: {
  details: ClassDetails;
  members: readonly ClassMember[];
  invitations: readonly OpenInvitation[];
}) {
  const { id, name, role, archivedAt, timeZone } = details;
  const mayRun = role === 'owner' && archivedAt === null;
  return (
    <SettingsSection
      id="people"
      title="People"
      lead="A teacher sets, marks and changes everything here; the owner also decides who teaches and what becomes of the class. An observer reads and changes nothing, and sees no accommodations and no files."
    >
      <MemberTable
        members={members}
        className={name}
        actionsFor={
          mayRun
            ? (teacherId) => ({
                changeRole: giveRole.bind(null, id, teacherId),
                remove: takeOut.bind(null, id, teacherId),
                handOver: handOver.bind(null, id, teacherId),
              })
            : null
        }
      />
      {mayRun ? (
        <div className="space-y-3">
          <h3 className="text-lg font-semibold">Invite a colleague</h3>
          <InviteTeacher into={id} invite={inviteInto} />
        </div>
      ) : null}
      {mayRun || invitations.length > 0 ? (
        <div className="space-y-3">
          <h3 className="text-lg font-semibold">Open invitations</h3>
          <InvitationTable
            invitations={invitations}
            timeZone={timeZone}
            takeBackFor={(invitationId) => takeBackLink.bind(null, id, invitationId)}
          />
        </div>
      ) : null}
      {role === 'teacher' && archivedAt === null ? <LeaveClass classId={id} name={name} /> : null}
    </SettingsSection>
  );
}

/** For whoever is not the owner, observers too. */
export function LeaveClass({ classId, name }: { classId: string; name: string }) {
  return (
    <ConfirmAction
      action={leaveClass.bind(null, classId)}
      title={`Leave ${name}?`}
      description="The class goes from your desk at once. Only its owner can invite you again."
      confirmLabel="Leave the class"
      busyLabel="Leaving"
    >
      Leave the class…
    </ConfirmAction>
  );
}
