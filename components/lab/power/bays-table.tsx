'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Select } from '@/components/ui/select';
import { TableFrame } from '@/components/ui/table-frame';
import { bayEnds } from '@/lib/power/holder';
import { loose } from '@/lib/power/power-bench';
import { isHolderClosed } from '@/lib/variants/bench/power/power-variant';
import { keepPlaceInRow } from './keep-place';
import { benchOf, perform, type PowerViewProps } from './power-play';
import { bayName, cellText, ways } from './power-words';

/** The holder, bay by bay: what is in it, and putting in, turning and taking out. */
export function BaysTable(props: PowerViewProps) {
  const { bench } = benchOf(props.variant, props.draft);
  const closed = isHolderClosed(props.variant);
  return (
    <TableFrame caption={closed ? 'The closed holder' : 'The holder'}>
      <thead>
        <tr>
          <th scope="col">Bay</th>
          {closed ? null : <th scope="col">Spring at the</th>}
          <th scope="col">In it</th>
          <th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        {bench.bays.map(({ springEnd, put }, bay) => (
          // Bays are known by their place.
          <tr key={bay}>
            <th scope="row" tabIndex={-1}>
              {bay + 1}
            </th>
            {closed ? null : <td>{springEnd}</td>}
            <td>
              {closed
                ? 'a cell, its ends hidden'
                : put === null
                  ? 'empty'
                  : `${cellText(put.cell)}, ${ways[put.plusEnd]}`}
            </td>
            <td>
              {put === null ? (
                <PutIn {...props} bay={bay} />
              ) : (
                <span className="flex flex-wrap gap-2">
                  <Button
                    aria-label={`Turn round the cell in ${bayName(bay)}`}
                    onClick={() => {
                      perform(props, { do: 'turn', bay });
                    }}
                  >
                    Turn round
                  </Button>
                  {closed ? null : (
                    <Button
                      aria-label={`Take the cell out of ${bayName(bay)}`}
                      onClick={(event) => {
                        keepPlaceInRow(event);
                        perform(props, { do: 'take', bay });
                      }}
                    >
                      Take out
                    </Button>
                  )}
                </span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

/** A cell from the bench, and its two ways in. */
function PutIn(props: PowerViewProps & { bay: number }) {
  const { variant, draft, bay } = props;
  const { bench } = benchOf(variant, draft);
  const [chosen, setChosen] = useState('');
  const cells = loose(variant.setup, bench);
  const cell = cells.find(({ id }) => id === chosen);
  return (
    <span className="flex flex-wrap items-center gap-2">
      <Select
        aria-label={`Cell for ${bayName(bay)}`}
        className="max-w-36"
        value={cell?.id ?? ''}
        onChange={(event) => {
          setChosen(event.target.value);
        }}
      >
        <option value="">Cell …</option>
        {cells.map(({ id }) => (
          <option key={id} value={id}>
            {id}
          </option>
        ))}
      </Select>
      {bayEnds.map((plusEnd) => (
        <Button
          key={plusEnd}
          aria-label={`Put it into ${bayName(bay)}, ${ways[plusEnd]}`}
          aria-disabled={cell === undefined}
          onClick={(event) => {
            if (cell === undefined) {
              props.change(draft, 'Choose a cell for this bay first.');
              return;
            }
            keepPlaceInRow(event);
            perform(props, { do: 'put', cell: cell.id, bay, plusEnd });
          }}
        >
          {plusEnd === 'top' ? '+ up' : '+ down'}
        </Button>
      ))}
    </span>
  );
}
