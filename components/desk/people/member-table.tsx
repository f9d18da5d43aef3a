import { TableFrame } from '@/components/ui/table-frame';
import type { ClassMember } from '@/lib/data/members';
import { ActionForm, type FormActionFunction } from '../action-form';
import { roleText } from '../class-text';
import { ConfirmAction } from '../confirm-action';

/** What the owner may do about a colleague. The colleague's id is bound by the page. */
export type MemberActions = {
  changeRole: FormActionFunction;
  remove: FormActionFunction;
  handOver: FormActionFunction;
};

/** Who teaches the class and who looks on. */
export function MemberTable({
  members,
  className,
  actionsFor,
}: {
  members: readonly ClassMember[];
  className: string;
  /** null for a viewer who may not change who is here. */
  actionsFor: ((teacherId: string) => MemberActions) | null;
}) {
  return (
    <TableFrame caption={`Teachers of ${className}`} captionHidden stacked tall>
      <thead>
        <tr>
          <th scope="col">Name</th>
          <th scope="col">Role</th>
          {actionsFor === null ? null : <th scope="col">Change</th>}
        </tr>
      </thead>
      <tbody>
        {members.map((member) => (
          <tr key={member.teacherId}>
            <th scope="row" className="sm:min-w-56">
              {member.displayName}
              {member.isViewer ? <span className="font-normal text-soft"> (you)</span> : null}
              <span className="block text-sm font-normal wrap-anywhere text-soft">
                {member.email}
              </span>
            </th>
            <td>{roleText[member.role]}</td>
            {actionsFor === null ? null : (
              <td>
                {member.role === 'owner' ? (
                  <span className="text-sm text-soft">Hand the class over to change this.</span>
                ) : (
                  <MemberButtons
                    member={member}
                    role={member.role}
                    className={className}
                    actions={actionsFor(member.teacherId)}
                  />
                )}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

function MemberButtons({
  member,
  role,
  className,
  actions,
}: {
  member: ClassMember;
  role: 'teacher' | 'observer';
  className: string;
  actions: MemberActions;
}) {
  const name = member.displayName;
  const to = role === 'teacher' ? 'observer' : 'teacher';
  return (
    <div className="flex sm:min-w-64 flex-wrap items-start gap-2">
      <ActionForm
        key={role}
        idPrefix={`role-${member.teacherId}`}
        action={actions.changeRole}
        fields={[]}
        hidden={{ from: role, to }}
        submitLabel={to === 'observer' ? 'Make observer' : 'Make teacher'}
        busyLabel="Saving"
      />
      {role === 'teacher' ? (
        <ConfirmAction
          action={actions.handOver}
          title={`Hand ${className} over to ${name}?`}
          description={`${name} becomes the owner: decides who teaches here, how long the data is kept, and whether the class is archived or deleted. You stay as a teacher. Only ${name} can hand it back.`}
          confirmLabel={`Hand over to ${name}`}
          busyLabel="Handing over"
        >
          Hand over…
        </ConfirmAction>
      ) : null}
      <ConfirmAction
        action={actions.remove}
        variant="danger"
        title={`Take ${name} out of ${className}?`}
        description={`${name} no longer sees this class, at once. What ${name} set, marked and wrote stays.`}
        confirmLabel={`Take ${name} out`}
        busyLabel="Taking out"
      >
        Remove…
      </ConfirmAction>
    </div>
  );
}
