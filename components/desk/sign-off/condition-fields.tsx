import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { lights } from '@/lib/mastery/evening';
import { clouds, type Conditions } from '@/lib/mastery/sign-off-note';

export const lightText: Readonly<Record<Conditions['light'], string>> = {
  night: 'night',
  day: 'day',
};
export const cloudText: Readonly<Record<Conditions['cloud'], string>> = {
  clear: 'clear sky',
  some: 'some cloud',
  overcast: 'overcast',
};

/** Night or day, and the sky. */
export function ConditionFields({
  id,
  conditions,
  onChange,
}: {
  id: string;
  conditions: Conditions;
  onChange: (conditions: Conditions) => void;
}) {
  return (
    <>
      <Field id={`${id}-light`} label="Night or day">
        {(control) => (
          <Select
            {...control}
            className="[&_select]:min-h-11"
            value={conditions.light}
            onChange={({ target }) => {
              const light = lights.find((one) => one === target.value);
              if (light !== undefined) onChange({ ...conditions, light });
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
      <Field id={`${id}-cloud`} label="Sky">
        {(control) => (
          <Select
            {...control}
            className="[&_select]:min-h-11"
            value={conditions.cloud}
            onChange={({ target }) => {
              const cloud = clouds.find((one) => one === target.value);
              if (cloud !== undefined) onChange({ ...conditions, cloud });
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
    </>
  );
}
