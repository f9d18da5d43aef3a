import { useId, type ReactNode } from 'react';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import type { GradebookState } from '@/lib/grading/gradebook-state';
import type { GridView } from './grid-order';
import { gradebookStateText } from '@/components/grading/gradebook/gradebook-state-text';

const states: readonly GradebookState[] = [
  'missing',
  'not-yet',
  'late',
  'submitted',
  'returned',
  'needs-sign-off',
  'in-progress',
  'not-started',
  'complete',
  'excused',
];
const sorts: readonly (readonly [GridView['sort'], string])[] = [
  ['card', 'Card number'],
  ['name', 'Name'],
  ['mean', 'Mean, lowest first'],
];

/** Which students the gradebook shows, and in which order. */
export function GridControls({
  view,
  groups,
  onChange,
  shown,
  all,
  mayType,
}: {
  view: GridView;
  groups: readonly { id: string; name: string }[];
  onChange: (view: GridView) => void;
  shown: number;
  all: number;
  mayType: boolean;
}) {
  const state = states.find((known) => known === view.state);
  return (
    <div className="no-print space-y-1">
      <div className="flex flex-wrap items-end gap-3">
        <Choice
          label="Students with"
          value={view.state}
          onChange={(value) => {
            onChange({ ...view, state: states.find((known) => known === value) ?? '' });
          }}
        >
          <option value="">any state</option>
          {states.map((known) => (
            <option key={known} value={known}>
              {gradebookStateText[known].word}
            </option>
          ))}
        </Choice>
        {groups.length === 0 ? null : (
          <Choice
            label="Group"
            value={view.group}
            onChange={(group) => {
              onChange({ ...view, group });
            }}
          >
            <option value="">whole class</option>
            {groups.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </Choice>
        )}
        <Choice
          label="Order"
          value={view.sort}
          onChange={(value) => {
            onChange({ ...view, sort: sorts.find(([known]) => known === value)?.[0] ?? 'card' });
          }}
        >
          {sorts.map(([value, label]) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </Choice>
        <StatusLine className="self-center">
          {shown === all
            ? ''
            : `${String(shown)} of ${String(all)} students${state === undefined ? '' : `; what is ${gradebookStateText[state].word} is marked`}.`}
        </StatusLine>
      </div>
      <p className="hidden text-sm text-soft sm:block">
        By keyboard: arrows, Home, End and Page keys move in the table, Enter opens a cell
        {mayType ? ', a digit begins a mark of your own' : ''}.
      </p>
    </div>
  );
}

function Choice({
  label,
  value,
  onChange,
  children,
}: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  children: ReactNode;
}) {
  const id = useId();
  return (
    <div className="w-full max-w-48">
      <label htmlFor={id} className="text-sm font-semibold">
        {label}
      </label>
      <Select
        id={id}
        value={value}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      >
        {children}
      </Select>
    </div>
  );
}
