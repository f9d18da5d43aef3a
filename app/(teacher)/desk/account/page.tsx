import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { ActionForm } from '@/components/desk/action-form';
import { InviteTeacher } from '@/components/desk/invite-teacher';
import { InvitationTable } from '@/components/desk/people/invitation-table';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { TableFrame } from '@/components/ui/table-frame';
import { canInviteTeacher } from '@/lib/auth/policy';
import { getViewer, listSessions } from '@/lib/auth/session';
import { listClasses } from '@/lib/data/classes';
import { listOwnInvitations } from '@/lib/data/open-invitations';
import { routes } from '@/lib/routes';
import { homeOf } from '../../../home-of';
import { changeOwnPassword, endOne, invite, takeBackLink } from './actions';
import { ChangePasswordForm } from './change-password-form';

export const metadata: Metadata = { title: 'Account' };

export default async function AccountPage() {
  const viewer = await getViewer();
  // A substitute has no account.
  if (viewer.kind === 'cover') redirect(homeOf(viewer));
  const [sessions, classes, invitations] = await Promise.all([
    listSessions(viewer),
    listClasses(viewer),
    listOwnInvitations(viewer),
  ]);
  // A teacher's own zone is not stored: the clock of the first class is the nearest thing to it.
  const timeZone = classes[0]?.timeZone ?? 'UTC';
  const owned = classes.filter((entry) => entry.role === 'owner' && entry.archivedAt === null);
  return (
    <>
      <PageHeader
        title="Account"
        lead={viewer.kind === 'teacher' ? viewer.displayName : undefined}
        crumbs={[{ label: 'Desk', href: routes.teacher.desk() }]}
      />
      <div className="space-y-6">
        <Panel title="Where you are signed in">
          <TableFrame caption="Sessions" captionHidden tall>
            <thead>
              <tr>
                <th scope="col">Device</th>
                <th scope="col">Signed in</th>
                <th scope="col">Last used</th>
                <th scope="col">
                  <span className="sr-only">Sign out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {sessions.map((session) => (
                <tr key={session.id}>
                  <th scope="row" className="min-w-32">
                    {session.device}
                    {session.current ? (
                      <span className="font-normal text-soft"> (this one)</span>
                    ) : null}
                  </th>
                  <td className="whitespace-nowrap">
                    {zonedTimeText(session.createdAt, timeZone)}
                  </td>
                  <td className="whitespace-nowrap">
                    {zonedTimeText(session.lastSeenAt, timeZone)}
                  </td>
                  <td>
                    {session.current ? null : (
                      <ActionForm
                        idPrefix={`session-${session.id}`}
                        action={endOne}
                        fields={[]}
                        hidden={{ sessionId: session.id }}
                        submitLabel="Sign out there"
                      />
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          </TableFrame>
          <p className="mt-2 text-sm text-soft">
            Times on the clock of {timeZone}. No addresses are kept with a session. If one is not
            yours, end it.
          </p>
        </Panel>
        <Panel title="Change your password">
          <ChangePasswordForm action={changeOwnPassword} />
        </Panel>
        {canInviteTeacher(
          viewer,
          classes.flatMap(({ role }) => (role === 'cover' ? [] : [role])),
        ) ? (
          <Panel title="Invite another teacher">
            <InviteTeacher into={owned.map(({ id, name }) => ({ id, name }))} invite={invite} />
          </Panel>
        ) : null}
        {invitations === null || invitations.length === 0 ? null : (
          <Panel title="Invitations you made">
            <InvitationTable
              invitations={invitations}
              timeZone={timeZone}
              takeBackFor={(invitationId) => takeBackLink.bind(null, invitationId)}
              withClass
            />
          </Panel>
        )}
      </div>
    </>
  );
}
