import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';

type NightFormProps = {
  sites: readonly { id: string; label: string }[];
  siteId: string;
  localDate: string;
  endsAt: string;
  problem: { field: string; message: string } | null;
};

/** Asks for evening, end and place; a plain form, so that a plan's address can be kept and shared. */
export function NightForm({ sites, siteId, localDate, endsAt, problem }: NightFormProps) {
  const errorOf = (field: string): string | null =>
    problem?.field === field ? problem.message : null;
  return (
    <form method="get" className="no-print mb-6 flex flex-wrap items-end gap-x-4 gap-y-3">
      <Field label="Evening of" error={errorOf('date')}>
        {(control) => (
          <TextInput {...control} type="date" name="date" defaultValue={localDate} required />
        )}
      </Field>
      <Field label="Pack up at" error={errorOf('ends')}>
        {(control) => (
          <TextInput {...control} type="time" name="ends" defaultValue={endsAt} required />
        )}
      </Field>
      <div className="min-w-64 flex-1">
        <Field label="Place and skyline">
          {(control) => (
            <Select {...control} name="site" defaultValue={siteId}>
              {sites.map(({ id, label }) => (
                <option key={id} value={id}>
                  {label}
                </option>
              ))}
            </Select>
          )}
        </Field>
      </div>
      <Button type="submit" variant="primary">
        Plan this evening
      </Button>
    </form>
  );
}
