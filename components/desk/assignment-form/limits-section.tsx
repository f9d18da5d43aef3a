'use client';

import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { DecimalField } from '../decimal-field';
import type { AssignmentDraft } from './assignment-draft';
import { Fold } from './fold';
import type { SectionProps } from './section';
import { skyWords } from './set-words';

const darkness = [
  ['4', 'City (to magnitude 4)'],
  ['5', 'Suburb (to magnitude 5)'],
  ['6', 'Country (to magnitude 6)'],
] as const;

const settingFields = [
  [
    'faintestMagnitude',
    'Faintest alignment star',
    'magnitude',
    'A fainter one is hard to be sure of.',
  ],
  ['lowestAltitudeDeg', 'Lowest altitude', '°', 'Below it haze and refraction spoil a star.'],
  [
    'highestAltitudeDeg',
    'Highest altitude',
    '°',
    'Near the zenith a small azimuth error is hard to see and the tube can meet the mount.',
  ],
  ['horizonMarginDeg', 'Margin above the skyline', '°', undefined],
  ['moonDistanceDeg', 'Distance from the Moon', '°', undefined],
] as const;

/** How dark the sky is, and what makes a star usable: defaults that few teachers change, folded away. */
const limitFields = [
  ...settingFields.map(([key]) => `scenario.settings.${key}`),
  'scenario.sky.extinction',
];

export function LimitsSection({ draft, change, problemAt }: SectionProps<AssignmentDraft>) {
  const known = darkness.some(([value]) => value === draft.sky.darkestLimitMagnitude);
  return (
    <Fold
      asSection
      id="section-sky"
      title="Sky"
      now={skyWords(draft)}
      hasProblem={['scenario.sky.darkestLimitMagnitude', ...limitFields].some(
        (field) => problemAt(field) !== null,
      )}
    >
      <Field
        id="scenario.sky.darkestLimitMagnitude"
        label="How dark the sky gets"
        hint="The faintest star seen overhead on a moonless night. Twilight and moonlight are taken off it: our own approximation, no source."
        error={problemAt('scenario.sky.darkestLimitMagnitude')}
      >
        {(control) => (
          <Select
            {...control}
            className="max-w-md"
            value={draft.sky.darkestLimitMagnitude}
            onChange={(event) =>
              change({ sky: { ...draft.sky, darkestLimitMagnitude: event.target.value } })
            }
          >
            {darkness.map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
            {known ? null : (
              <option value={draft.sky.darkestLimitMagnitude}>
                Magnitude {draft.sky.darkestLimitMagnitude}
              </option>
            )}
          </Select>
        )}
      </Field>
      <h3 className="font-semibold">Limits for an alignment star</h3>
      <div className="grid gap-x-6 gap-y-4 sm:grid-cols-2">
        {settingFields.map(([key, label, unit, hint]) => (
          <DecimalField
            key={key}
            id={`scenario.settings.${key}`}
            label={label}
            unit={unit}
            hint={hint}
            error={problemAt(`scenario.settings.${key}`)}
            value={draft.settings[key]}
            onChange={(value) => change({ settings: { ...draft.settings, [key]: value } })}
          />
        ))}
        <DecimalField
          id="scenario.sky.extinction"
          label="Extinction"
          unit="magnitudes per air mass"
          hint="How much light the air takes. 0.25 is a usual clear night near the ground."
          error={problemAt('scenario.sky.extinction')}
          value={draft.sky.extinction}
          onChange={(extinction) => change({ sky: { ...draft.sky, extinction } })}
        />
      </div>
      <p className="mt-3 text-sm text-soft">
        The altitudes, the margin and the distance are common practice; no source.
      </p>
    </Fold>
  );
}
