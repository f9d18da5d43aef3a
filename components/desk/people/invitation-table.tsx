import { zonedTimeText } from '@/components/grading/zoned-time';
import { TableFrame } from '@/components/ui/table-frame';
import type { OpenInvitation } from '@/lib/data/open-invitations';
import { roleText } from '../class-text';
import { ConfirmAction } from '../confirm-action';
import type { FormActionFunction } from '../action-form';

/** The invitation links that still work: who made each, what it makes of whoever follows it, until when. */
export function InvitationTable({
  invitations,
  timeZone,
  takeBackFor,
  withClass = false,
}: {
  invitations: readonly OpenInvitation[];
  timeZone: string;
  takeBackFor: (invitationId: string) => FormActionFunction;
  /** Whether the list is of several classes, so that each row says which. */
  withClass?: boolean;
}) {
  if (invitations.length === 0) return <p className="text-soft">No link is open.</p>;
  return (
    <TableFrame caption="Invitation links that still work" stacked tall>
      <thead>
        <tr>
          <th scope="col">Made</th>
          <th scope="col">Invites</th>
          <th scope="col">Works until</th>
          <th scope="col">
            <span className="sr-only">Take back</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {invitations.map((invitation) => {
          const made = zonedTimeText(invitation.madeAt, timeZone);
          const maker = invitation.isOwn ? 'you' : (invitation.madeBy ?? 'a former teacher');
          return (
            <tr key={invitation.invitationId}>
              <th scope="row" className="sm:min-w-36">
                {made}
                <span className="block text-sm font-normal text-soft">by {maker}</span>
              </th>
              <td className="sm:min-w-32">{invitedAs(invitation, withClass)}</td>
              <td className="sm:min-w-28">
                {/* Said by the head of the column where that is seen. */}
                <span aria-hidden="true" className="sm:hidden">
                  until{' '}
                </span>
                {zonedTimeText(invitation.expiresAt, timeZone)}
                {invitation.rests && (
                  <span className="block text-sm text-soft">not while the class is archived</span>
                )}
              </td>
              <td>
                {invitation.canTakeBack ? (
                  <ConfirmAction
                    action={takeBackFor(invitation.invitationId)}
                    variant="danger"
                    title="Take this link back?"
                    description={`It was made ${made} by ${maker} and has not been used. From now on it opens nothing; whoever follows it is told to ask for a new one.`}
                    confirmLabel="Take it back"
                    busyLabel="Taking back"
                  >
                    Take back…<span className="sr-only"> the link of {made}</span>
                  </ConfirmAction>
                ) : (
                  <span className="text-sm text-soft">The owner can take it back.</span>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </TableFrame>
  );
}

function invitedAs({ role, className }: OpenInvitation, withClass: boolean): string {
  if (role === null) return 'to an account, without a class';
  return withClass && className !== null ? `${roleText[role]}, in ${className}` : roleText[role];
}
