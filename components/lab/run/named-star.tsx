'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** The mount's list of bright stars; it tells the mount which star will be centred. */
export function NamedStar({
  model,
  label = 'The star you will centre',
}: {
  model: RunModel;
  label?: string;
}) {
  const { confirmed, minutes } = useRunSnapshot(model);
  const [list] = useState({ minutes: -1, stars: model.lists.mountList() });
  const [hip, setHip] = useState<number | null>(null);
  const stars = minutes - list.minutes > 10 ? model.lists.mountList() : list.stars;
  return (
    <div className="space-y-3">
      <Field
        label={label}
        hint={`Bright stars that the mount believes are up: ${String(stars.length)}.`}
      >
        {(control) => (
          <Select
            {...control}
            value={hip ?? ''}
            onChange={(event) => {
              setHip(event.target.value === '' ? null : Number(event.target.value));
            }}
          >
            <option value="">Choose a name …</option>
            {stars
              .filter((star) => !confirmed.some((one) => one.hip === star.hip))
              .map((star) => (
                <option key={star.hip} value={star.hip}>
                  {star.name}
                </option>
              ))}
          </Select>
        )}
      </Field>
      <Button
        variant="primary"
        size="large"
        className="w-full select-none"
        onClick={() => {
          if (hip === null) model.tell('Choose a name first.');
          else model.goTo(hip);
        }}
      >
        Drive there
      </Button>
    </div>
  );
}
