import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { lights } from '@/lib/mastery/evening';
import { clouds, type Conditions } from '@/lib/mastery/sign-off-note';
import { eveningText } from './cell-view';
import type { EveningSettings } from './kept-on-device';

const lightText: Readonly<Record<Conditions['light'], string>> = { night: 'night', day: 'day' };
export const cloudText: Readonly<Record<Conditions['cloud'], string>> = {
  clear: 'clear sky',
  some: 'some cloud',
  overcast: 'overcast',
};

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
  const set = (change: Partial<Conditions>) =>
    onChange({ ...settings, conditions: { ...conditions, ...change } });
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
        <Field id="sign-off-light" label="Night or day">
          {(control) => (
            <Select
              {...control}
              value={conditions.light}
              onChange={({ target }) => {
                const light = lights.find((one) => one === target.value);
                if (light !== undefined) set({ light });
              }}
            >
              {lights.map((light) => (
                <option key={light} value={light}>
                  {lightText[light]}
                </option>
              ))}
            </Select>
          )}
        </Field>
        <Field id="sign-off-cloud" label="Sky">
          {(control) => (
            <Select
              {...control}
              value={conditions.cloud}
              onChange={({ target }) => {
                const cloud = clouds.find((one) => one === target.value);
                if (cloud !== undefined) set({ cloud });
              }}
            >
              {clouds.map((cloud) => (
                <option key={cloud} value={cloud}>
                  {cloudText[cloud]}
                </option>
              ))}
            </Select>
          )}
        </Field>
        <Field id="sign-off-telescope" label="Telescope">
          {(control) => (
            <Select
              {...control}
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
