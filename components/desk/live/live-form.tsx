import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import type { LiveChoices } from '@/lib/data/live-board';
import type { LiveOptions } from '@/lib/data/live-input';

/**
 * What the board shows; a plain form, so that the address keeps the choice for as long as the visit lasts.
 * Folded to a line that tells the choice: the students come first, on a phone above all.
 */
export function LiveForm({ options, choices }: { options: LiveOptions; choices: LiveChoices }) {
  return (
    <details className="no-print min-w-0 rounded-md border border-line bg-panel open:w-full">
      <summary className="flex min-h-11 cursor-pointer flex-wrap items-center gap-x-3 px-3 text-sm">
        <span>{choiceText(options, choices)}</span>
        <span className="ms-auto underline decoration-dotted underline-offset-4">change</span>
      </summary>
      <form method="get" className="flex flex-wrap items-end gap-x-5 gap-y-3 p-3">
        {choices.groups.length === 0 ? null : (
          <Choice
            label="Group"
            name="group"
            value={options.group}
            all="Whole class"
            choices={choices.groups}
          />
        )}
        {choices.assignments.length === 0 ? null : (
          <Choice
            label="Who is at"
            name="assignment"
            value={options.assignment}
            all="Anything"
            choices={choices.assignments}
          />
        )}
        <Field label="Order">
          {(control) => (
            <Select {...control} name="order" defaultValue={options.order} className="max-w-56">
              <option value="need">Who needs me first</option>
              <option value="card">By card number</option>
            </Select>
          )}
        </Field>
        <div className="space-y-1">
          <Checkbox
            label="Hide names"
            name="names"
            value="hidden"
            defaultChecked={options.names === 'hidden'}
          />
          <Checkbox
            label="Large type"
            name="size"
            value="large"
            defaultChecked={options.size === 'large'}
          />
        </div>
        <Button type="submit">Show</Button>
      </form>
    </details>
  );
}

function choiceText(
  { group, assignment, order, names }: LiveOptions,
  choices: LiveChoices,
): string {
  const named = (id: string | null, from: readonly { id: string; label: string }[]) =>
    from.find((one) => one.id === id)?.label;
  return [
    named(group, choices.groups) ?? 'Whole class',
    named(assignment, choices.assignments),
    order === 'need' ? 'who needs you first' : 'by card number',
    names === 'hidden' ? 'names hidden' : undefined,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}

function Choice(props: {
  label: string;
  name: string;
  value: string | null;
  all: string;
  choices: readonly { id: string; label: string }[];
}) {
  return (
    <Field label={props.label}>
      {(control) => (
        <Select
          {...control}
          name={props.name}
          defaultValue={props.value ?? ''}
          className="max-w-64"
        >
          <option value="">{props.all}</option>
          {props.choices.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </Select>
      )}
    </Field>
  );
}
