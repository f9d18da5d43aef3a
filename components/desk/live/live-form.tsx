import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Field } from '@/components/ui/field';
import { LinkButton } from '@/components/ui/link-button';
import { Select } from '@/components/ui/select';
import type { LiveChoices } from '@/lib/data/live-board';
import type { LiveOptions } from '@/lib/data/live-input';

/** What the board shows; a plain form, so that the address keeps the choice for as long as the visit lasts. */
export function LiveForm({
  options,
  choices,
  projectorHref,
}: {
  options: LiveOptions;
  choices: LiveChoices;
  projectorHref: string;
}) {
  return (
    <form method="get" className="no-print flex flex-wrap items-end gap-x-5 gap-y-3">
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
      <LinkButton href={projectorHref} variant="plain">
        For the projector
      </LinkButton>
    </form>
  );
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
