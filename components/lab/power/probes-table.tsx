'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TableFrame } from '@/components/ui/table-frame';
import { benchOf, perform, type PowerViewProps } from './power-play';
import { studName, voltsText } from './power-words';

/** The meter's two probes on the holder's studs, and what was read so far. */
export function ProbesTable(props: PowerViewProps) {
  const { bench } = benchOf(props.variant, props.draft);
  const last = bench.bays.length;
  const [probes, setProbes] = useState({ red: last, black: 0 });
  return (
    <section aria-labelledby="power-probes" className="space-y-3">
      <h3 id="power-probes" className="font-semibold">
        The meter
      </h3>
      <p className="max-w-measure text-sm text-soft">
        Stud 0 is the holder’s minus lead, stud {last} its plus lead; between two studs lie the bays
        counted from the lower one.
      </p>
      <div className="flex flex-wrap items-end gap-3">
        {(['red', 'black'] as const).map((probe) => (
          <Field key={probe} label={probe === 'red' ? 'Red probe on' : 'Black probe on'}>
            {(control) => (
              <Select
                {...control}
                value={String(probes[probe])}
                onChange={(event) => {
                  setProbes({ ...probes, [probe]: Number(event.target.value) });
                }}
              >
                {Array.from({ length: last + 1 }, (_, stud) => (
                  <option key={stud} value={String(stud)}>
                    {studName(stud, last)}
                  </option>
                ))}
              </Select>
            )}
          </Field>
        ))}
        <Button
          onClick={() => {
            perform(props, { do: 'read', ...probes });
          }}
        >
          Read the meter
        </Button>
      </div>
      {bench.readings.length === 0 ? null : (
        <TableFrame caption="Read so far">
          <thead>
            <tr>
              <th scope="col">Red on</th>
              <th scope="col">Black on</th>
              <th scope="col" className="number">
                Meter
              </th>
            </tr>
          </thead>
          <tbody>
            {bench.readings.map(({ red, black, volts }, i) => (
              // The same two studs may be read again.
              <tr key={i}>
                <td>{studName(red, last)}</td>
                <td>{studName(black, last)}</td>
                <td className="number">{voltsText(volts)}</td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      )}
    </section>
  );
}
