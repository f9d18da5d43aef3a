import { Checkbox } from '@/components/ui/checkbox';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { Select } from '@/components/ui/select';
import type { ColumnMapping } from '@/lib/roster/list-check';
import type { PersonalKind, RosterColumn } from '@/lib/roster/roster-columns';

const kindText: Readonly<Record<PersonalKind, string>> = {
  email: 'email addresses',
  'birth-date': 'birth dates or ages',
  phone: 'telephone numbers',
  address: 'addresses',
  password: 'passwords',
  gender: 'gender',
  guardian: 'family or other contacts',
};

/** Which column is the name, which an id, and what is left behind. */
export function ColumnChoice({
  columns,
  mapping,
  onChange,
}: {
  columns: readonly RosterColumn[];
  mapping: ColumnMapping;
  onChange: (mapping: ColumnMapping) => void;
}) {
  const open = columns.filter((column) => column.personal === null);
  const dropped = columns.filter((column) => column.personal !== null);
  const option = (column: RosterColumn) => (
    <option key={column.index} value={column.index}>
      {column.label}
      {column.samples.length === 0 ? ' (empty)' : `: ${column.samples.join(', ')}`}
    </option>
  );
  return (
    <div className="space-y-4">
      {dropped.length === 0 ? null : (
        <Notice
          tone="caution"
          title={
            dropped.length === 1
              ? 'One column is left behind'
              : `${dropped.length} columns are left behind`
          }
        >
          <ul className="list-disc ps-5">
            {dropped.map((column) => (
              <li key={column.index}>
                {column.label}: looks like{' '}
                {column.personal === null ? '' : kindText[column.personal]}. This product neither
                needs nor keeps them.
              </li>
            ))}
          </ul>
        </Notice>
      )}
      <Checkbox
        label="The first row names the columns"
        checked={mapping.hasHeader}
        onChange={(event) => onChange({ ...mapping, hasHeader: event.target.checked })}
      />
      <div className="grid gap-4 sm:grid-cols-2">
        <Field label="Column with the name to show">
          {(control) => (
            <Select
              {...control}
              value={mapping.nameColumn}
              onChange={(event) => {
                const nameColumn = Number(event.target.value);
                onChange({
                  ...mapping,
                  nameColumn,
                  joinColumn: mapping.joinColumn === nameColumn ? null : mapping.joinColumn,
                  idColumn: mapping.idColumn === nameColumn ? null : mapping.idColumn,
                });
              }}
            >
              {open.map(option)}
            </Select>
          )}
        </Field>
        <Field label="Followed by">
          {(control) => (
            <Select
              {...control}
              value={mapping.joinColumn ?? ''}
              onChange={(event) =>
                onChange({
                  ...mapping,
                  joinColumn: event.target.value === '' ? null : Number(event.target.value),
                })
              }
            >
              <option value="">nothing</option>
              {open.filter((column) => column.index !== mapping.nameColumn).map(option)}
            </Select>
          )}
        </Field>
        <Field
          label="Column with an id"
          hint="A number or code of the school’s own that stays from list to list: then a later list changes names instead of doubling students. A national number is never needed."
          optional
        >
          {(control) => (
            <Select
              {...control}
              value={mapping.idColumn ?? ''}
              onChange={(event) =>
                onChange({
                  ...mapping,
                  idColumn: event.target.value === '' ? null : Number(event.target.value),
                })
              }
            >
              <option value="">none: students are known again by name</option>
              {open.filter((column) => column.index !== mapping.nameColumn).map(option)}
            </Select>
          )}
        </Field>
      </div>
    </div>
  );
}
