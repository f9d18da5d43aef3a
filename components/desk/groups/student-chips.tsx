import { Check } from 'lucide-react';
import { classNames } from '@/components/ui/class-names';
import type { GroupStudent } from '@/lib/data/groups';

/** Students to be chosen for a move: a press chooses, another lets go. */
export function StudentChips({
  students,
  chosen,
  toggle,
}: {
  students: readonly GroupStudent[];
  chosen: ReadonlySet<string>;
  toggle: (studentId: string) => void;
}) {
  if (students.length === 0) return <p className="text-sm text-soft">Nobody yet.</p>;
  return (
    <ul className="flex flex-wrap gap-1.5">
      {students.map(({ studentId, displayName, cardNumber }) => {
        const pressed = chosen.has(studentId);
        return (
          <li key={studentId}>
            <button
              type="button"
              aria-pressed={pressed}
              onClick={() => toggle(studentId)}
              className={classNames(
                'inline-flex min-h-(--target-small) items-center gap-1.5 rounded-md border px-2 py-0.5',
                pressed
                  ? 'border-accent bg-panel font-semibold shadow-[inset_0_0_0_1px_var(--accent)]'
                  : 'border-strong bg-panel hover:bg-sunken',
              )}
            >
              {pressed ? <Check aria-hidden="true" className="size-4" /> : null}
              {displayName}
              <span className="font-figures text-sm font-normal text-soft">{cardNumber}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
