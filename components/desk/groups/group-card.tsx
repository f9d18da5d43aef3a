import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import type { GroupStudent } from '@/lib/data/groups';
import type { DraftGroup } from './group-draft';
import { StudentChips } from './student-chips';

export type Telescope = { id: string; name: string };

/** One group in the editor: its name, its telescope, who is in it, and the way in. */
export function GroupCard({
  group,
  students,
  telescopes,
  chosen,
  nameProblem,
  change,
  toggle,
  putHere,
  remove,
}: {
  group: DraftGroup;
  students: readonly GroupStudent[];
  telescopes: readonly Telescope[];
  chosen: ReadonlySet<string>;
  nameProblem: string | null;
  change: (change: { name?: string; kitId?: string | null }) => void;
  toggle: (studentId: string) => void;
  putHere: () => void;
  remove: () => void;
}) {
  const name = group.name.trim() === '' ? 'this group' : group.name;
  return (
    <section
      aria-label={`Group ${name}`}
      className="space-y-3 rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4"
    >
      <div className="grid grid-cols-2 gap-3">
        <Field label="Name" id={`group-${group.key}`} error={nameProblem}>
          {(control) => (
            <TextInput
              {...control}
              maxLength={40}
              autoComplete="off"
              value={group.name}
              onChange={(event) => change({ name: event.target.value })}
            />
          )}
        </Field>
        <Field label="Telescope">
          {(control) => (
            <Select
              {...control}
              value={group.kitId ?? ''}
              onChange={(event) =>
                change({ kitId: event.target.value === '' ? null : event.target.value })
              }
            >
              <option value="">none set</option>
              {telescopes.map((telescope) => (
                <option key={telescope.id} value={telescope.id}>
                  {telescope.name}
                </option>
              ))}
            </Select>
          )}
        </Field>
      </div>
      <StudentChips students={students} chosen={chosen} toggle={toggle} />
      <div className="flex flex-wrap items-center gap-2">
        <Button disabled={chosen.size === 0} onClick={putHere}>
          {chosen.size === 0 ? 'Put here' : `Put ${chosen.size} here`}
          <span className="sr-only"> into {name}</span>
        </Button>
        <Button variant="plain" onClick={remove}>
          Delete<span className="sr-only"> {name}</span>
        </Button>
        <span className="ms-auto text-sm text-soft">
          {students.length} {students.length === 1 ? 'student' : 'students'}
        </span>
      </div>
    </section>
  );
}
