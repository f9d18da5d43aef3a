'use client';

import { useId, useState } from 'react';
import { signpostDirections } from '@/components/sky/directions';
import {
  brightnessInWords,
  fistsInWords,
  handPosition,
  roundedAltitudeDeg,
  roundedAzimuthDeg,
  sidewaysInWords,
  toHalfMagnitude,
} from '@/components/sky/position-words';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TableFrame } from '@/components/ui/table-frame';
import { SkyInWords } from './sky-in-words';
import type { BrightnessFilter, TableRow } from './table-rows';
import { notesOf, tableRows } from './table-rows';
import type { PairLabModel } from './use-pair-lab';

const brightnessFilters: readonly { value: BrightnessFilter; label: string }[] = [
  { value: 'bright', label: 'Bright ones only' },
  { value: 'first', label: 'The brightest 60' },
  { value: 'all', label: 'Fainter ones too' },
];

/** The same sky as a table: every light with a letter, judged as roughly as an eye would. */
export function PairTable({ lab }: { lab: PairLabModel }) {
  const [brightness, setBrightness] = useState<BrightnessFilter>('first');
  const [direction, setDirection] = useState('all');
  const groupName = useId();
  const star = lab.stage.at === 'look-alike' ? (`hip-${lab.stage.hip}` as const) : null;
  const starPlace = star === null ? null : lab.placeOf(star);
  const near = star === null || starPlace === null ? null : { id: star, place: starPlace };
  const rows = tableRows(lab.labelled, { brightness, direction, near });
  return (
    <div className="space-y-4 p-4">
      <SkyInWords lab={lab} />
      {near === null ? (
        <div className="flex flex-wrap gap-x-4 gap-y-2">
          <Field label="How bright">
            {(control) => (
              <Select
                {...control}
                value={brightness}
                onChange={(event) => {
                  const chosen = brightnessFilters.find(
                    ({ value }) => value === event.target.value,
                  );
                  if (chosen !== undefined) setBrightness(chosen.value);
                }}
              >
                {brightnessFilters.map(({ value, label }) => (
                  <option key={value} value={value}>
                    {label}
                  </option>
                ))}
              </Select>
            )}
          </Field>
          <Field label="Where">
            {(control) => (
              <Select
                {...control}
                value={direction}
                onChange={(event) => {
                  setDirection(event.target.value);
                }}
              >
                <option value="all">All round</option>
                {signpostDirections.map(({ word }) => (
                  <option key={word} value={word}>
                    Towards {word}
                  </option>
                ))}
              </Select>
            )}
          </Field>
        </div>
      ) : null}
      <TableFrame
        caption={
          near === null
            ? `${rows.length} lights, from north round through east. A light keeps its letter in every list`
            : `${rows.length} lights near ${lab.nameOf(near.id)}, the nearest first`
        }
        className="max-h-none lg:max-h-[75dvh]"
      >
        <thead>
          <tr>
            <th scope="col">Light</th>
            {near === null ? null : <th scope="col">From {lab.nameOf(near.id)}</th>}
            <th scope="col">Direction</th>
            <th scope="col">Height</th>
            <th scope="col">Looks</th>
            <th scope="col">Also</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <LightRow key={row.light.id} row={row} lab={lab} groupName={groupName} />
          ))}
        </tbody>
      </TableFrame>
      {rows.length === 0 ? <p>No light that the eye can make out there.</p> : null}
    </div>
  );
}

function LightRow({
  row,
  lab,
  groupName,
}: {
  row: TableRow;
  lab: PairLabModel;
  groupName: string;
}) {
  const { light, fistsAway } = row;
  const hand = handPosition(light.azimuthDeg, light.altitudeDeg);
  const inputId = `${groupName}-${light.letter}`;
  const notes = notesOf(light, { horizon: lab.sky.horizon, moon: lab.sky.frame.moon });
  const pick = lab.choice.draft.picks.findIndex(({ hip }) => `hip-${hip}` === light.id);
  if (pick >= 0) notes.unshift(`your ${pick === 0 ? 'first' : 'second'} star`);
  if (lab.proposalHip !== null && light.id === `hip-${lab.proposalHip}`)
    notes.unshift('proposed by the mount');
  return (
    <tr className={lab.selected?.id === light.id ? 'bg-accent-soft' : undefined}>
      <th scope="row" className="whitespace-nowrap">
        <label htmlFor={inputId} className="inline-flex min-h-8 min-w-11 items-center gap-2">
          <input
            id={inputId}
            type="radio"
            name={groupName}
            className="size-5 accent-(--lamp-edge)"
            checked={lab.selected?.id === light.id}
            onChange={() => {
              lab.look(light);
            }}
          />
          {light.letter}
        </label>
      </th>
      {fistsAway === null ? null : <td>{fistsInWords(fistsAway)}</td>}
      <td>
        <span className="font-figures">{roundedAzimuthDeg(light.azimuthDeg)}°</span>{' '}
        <span className="text-soft">{sidewaysInWords(hand)}</span>
      </td>
      <td>
        <span className="font-figures">{roundedAltitudeDeg(light.altitudeDeg)}°</span>{' '}
        <span className="text-soft">{fistsInWords(hand.fistsUp)}</span>
      </td>
      <td>
        {brightnessInWords(light.seenAs)}{' '}
        <span className="font-figures text-soft">{toHalfMagnitude(light.seenAs)}</span>
      </td>
      <td>{notes.join(', ')}</td>
    </tr>
  );
}
