import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import { TextLink } from '@/components/ui/text-link';

type NightFormProps = {
  sites: readonly { id: string; label: string }[];
  siteId: string;
  /** Other towns by the name that was asked for. */
  otherTowns: readonly { id: string; label: string }[];
  localDate: string;
  endsAt: string;
  problem: { field: string; message: string } | null;
  submit?: string;
  /** The same evening at another place. */
  hrefFor: (siteId: string) => string;
};

/** Asks for evening, end and place; a plain form, so that a plan's address can be kept and shared. */
export function NightForm({
  sites,
  siteId,
  otherTowns,
  localDate,
  endsAt,
  problem,
  submit = 'Plan this evening',
  hrefFor,
}: NightFormProps) {
  const errorOf = (field: string): string | null =>
    problem?.field === field ? problem.message : null;
  return (
    <div className="no-print mb-6">
      <form method="get" className="flex flex-wrap items-end gap-x-4 gap-y-3">
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
              <Select {...control} key={siteId} name="site" defaultValue={siteId}>
                {sites.map(({ id, label }) => (
                  <option key={id} value={id}>
                    {label}
                  </option>
                ))}
              </Select>
            )}
          </Field>
        </div>
        <Field label="Another town" optional error={errorOf('town')}>
          {(control) => <TextInput {...control} name="town" maxLength={100} autoComplete="off" />}
        </Field>
        <Button type="submit" variant="primary">
          {submit}
        </Button>
      </form>
      {otherTowns.length === 0 ? null : (
        <p className="mt-2 text-sm text-soft">
          Not this one?{' '}
          {otherTowns.map(({ id, label }, index) => (
            <span key={id}>
              {index === 0 ? '' : ' · '}
              <TextLink href={hrefFor(id)}>{label}</TextLink>
            </span>
          ))}
        </p>
      )}
    </div>
  );
}
