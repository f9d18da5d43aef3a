import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { GroupEditor } from '@/components/desk/groups/group-editor';
import { GroupLists } from '@/components/desk/groups/group-lists';
import { EmptyState } from '@/components/ui/empty-state';
import { PrintButton } from '@/components/ui/print-button';
import { loadKits } from '@/lib/content/sky-catalogue';
import { getGroups } from '@/lib/data/groups';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import { storeGroups } from './actions';

export const metadata: Metadata = { title: 'Groups' };

export default async function GroupsPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach } = await classOf(params);
  const groups = await getGroups(viewer, details.id);
  if (groups === null) notFound();
  const telescopes = loadKits().map(({ id, name }) => ({ id, name }));
  const nobody = groups.groups.length === 0 && groups.withoutGroup.length === 0;
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <h2 className="text-xl font-semibold">Groups</h2>
        {mayTeach || nobody ? null : <PrintButton>Print the lists</PrintButton>}
      </div>
      <p className="no-print max-w-measure text-soft">
        Who stands at which telescope. Sign-off and field cards go by these groups, and an
        assignment can be given more time for one of them.
      </p>
      {nobody ? (
        <NoStudentsYet addAt={mayTeach ? routes.teacher.classRoster(details.id) : null}>
          <p>List the class first; then deal it out to the telescopes here.</p>
        </NoStudentsYet>
      ) : mayTeach ? (
        <GroupEditor
          groups={groups}
          telescopes={telescopes}
          save={storeGroups.bind(null, details.id)}
        />
      ) : groups.groups.length === 0 ? (
        <EmptyState title="No groups yet">
          <p>The teachers of the class have made none.</p>
        </EmptyState>
      ) : (
        <GroupLists
          groups={groups.groups.map(({ groupId, name, kitId, students }) => ({
            key: groupId,
            name,
            telescope: telescopes.find(({ id }) => id === kitId)?.name ?? null,
            students,
          }))}
          withoutGroup={groups.withoutGroup}
        />
      )}
    </div>
  );
}
