import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { eveningText } from './cell-view';
import { cloudText, ConditionFields, lightText } from './condition-fields';
import type { EveningSettings } from './kept-on-device';

/** Set once an evening: it stands beside every note. */
export function EveningChoice({
  settings,
  telescopes,
  onChange,
}: {
  settings: EveningSettings;
  telescopes: readonly string[];
  onChange: (settings: EveningSettings) => void;
}) {
  const { evening, conditions, telescope } = settings;
  const own = 'each group’s own telescope';
  return (
    <details className="rounded-md border border-line bg-panel">
      <summary className="flex min-h-11 flex-wrap items-center gap-x-2 px-3 text-sm">
        <span className="font-semibold">{eveningText(evening)}</span>
        <span>
          {lightText[conditions.light]}, {cloudText[conditions.cloud]}
          {telescope === '' ? <span className="max-sm:sr-only">, {own}</span> : `, ${telescope}`}
        </span>
        <span className="ms-auto underline decoration-dotted underline-offset-4">change</span>
      </summary>
      <div className="grid gap-3 p-3 sm:grid-cols-3">
        <ConditionFields
          id="sign-off"
          conditions={conditions}
          onChange={(changed) => onChange({ ...settings, conditions: changed })}
        />
        <Field id="sign-off-telescope" label="Telescope">
          {(control) => (
            <Select
              {...control}
              className="[&_select]:min-h-11"
              value={telescope}
              onChange={({ target }) => onChange({ ...settings, telescope: target.value })}
            >
              <option value="">{own}</option>
              {telescopes.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </Select>
          )}
        </Field>
      </div>
    </details>
  );
}
