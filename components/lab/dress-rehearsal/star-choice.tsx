'use client';

import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TableFrame } from '@/components/ui/table-frame';
import type { Evening } from './evening';
import type { PlannedStar } from './planned-lights';

/** One of the two stars, by its name. */
export function StarChoice({
  evening,
  which,
  label,
  stars,
}: {
  evening: Evening;
  which: 'first' | 'second';
  label: string;
  stars: readonly PlannedStar[];
}) {
  const { plannedPair } = evening.draft;
  const other = plannedPair[which === 'first' ? 'second' : 'first'];
  const chosen = stars.find(({ hip }) => hip === plannedPair[which]);
  return (
    <Field label={label} hint={chosen === undefined ? undefined : `${chosen.where}.`}>
      {(control) => (
        <Select
          {...control}
          value={plannedPair[which] ?? ''}
          onChange={(event) => {
            const hip = event.target.value === '' ? null : Number(event.target.value);
            const name = stars.find((star) => star.hip === hip)?.name ?? 'none';
            evening.work(
              'pick-the-pair',
              { plannedPair: { ...plannedPair, [which]: hip } },
              `${label}: ${name}.`,
            );
          }}
        >
          <option value="">Choose a star …</option>
          {stars
            .filter(({ hip }) => hip !== other)
            .map(({ hip, name }) => (
              <option key={hip} value={hip}>
                {name}
              </option>
            ))}
        </Select>
      )}
    </Field>
  );
}

/** Where each of them stands, in fists and signposts. */
export function StarTable({ stars }: { stars: readonly PlannedStar[] }) {
  return (
    <TableFrame caption="Stars with a name that can be seen now">
      <thead>
        <tr>
          <th scope="col">Star</th>
          <th scope="col">Where</th>
          <th scope="col">How bright</th>
        </tr>
      </thead>
      <tbody>
        {stars.map(({ hip, name, where, brightness }) => (
          <tr key={hip}>
            <th scope="row">{name}</th>
            <td>{where}</td>
            <td>{brightness}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
