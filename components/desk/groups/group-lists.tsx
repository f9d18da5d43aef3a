import type { GroupStudent } from '@/lib/data/groups';
import { telescopeToName } from '@/lib/wording/group-name';

type ListedGroup = {
  key: string;
  name: string;
  telescope: string | null;
  students: readonly GroupStudent[];
};

/** Who is in which group, to read and to print: one box a group, kept whole on paper. */
export function GroupLists({
  groups,
  withoutGroup,
}: {
  groups: readonly ListedGroup[];
  withoutGroup: readonly GroupStudent[];
}) {
  return (
    <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-3 print:grid-cols-2">
      {groups.map((group) => (
        <section
          key={group.key}
          aria-labelledby={`list-${group.key}`}
          className="keep-together border border-t-2 border-line border-t-strong bg-panel p-4"
        >
          <h3 id={`list-${group.key}`} className="text-lg font-semibold">
            {group.name}
          </h3>
          <TelescopeLine group={group} />
          <Names students={group.students} />
        </section>
      ))}
      {withoutGroup.length === 0 ? null : (
        <section
          aria-labelledby="list-none"
          className="keep-together border border-dashed border-strong p-4"
        >
          <h3 id="list-none" className="mb-2 text-lg font-semibold">
            In no group
          </h3>
          <Names students={withoutGroup} />
        </section>
      )}
    </div>
  );
}

/** Nothing where the group is called by its telescope. */
function TelescopeLine({ group: { name, telescope } }: { group: ListedGroup }) {
  const named = telescopeToName(name, telescope);
  if (telescope !== null && named === null) return null;
  return (
    <p className="mb-2 text-sm text-soft">
      {named === null ? 'No telescope set' : `Telescope: ${named}`}
    </p>
  );
}

function Names({ students }: { students: readonly GroupStudent[] }) {
  return students.length === 0 ? (
    <p className="text-soft">Nobody yet.</p>
  ) : (
    <ul>
      {students.map(({ studentId, displayName, cardNumber }) => (
        <li key={studentId}>
          {displayName} <span className="font-figures text-sm text-soft">{cardNumber}</span>
        </li>
      ))}
    </ul>
  );
}
