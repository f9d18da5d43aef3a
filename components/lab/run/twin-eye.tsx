'use client';

import { useState } from 'react';
import { signpostDirections } from '@/components/sky/directions';
import {
  brightnessInWords,
  positionInWords,
  toHalfMagnitude,
} from '@/components/sky/position-words';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TableFrame } from '@/components/ui/table-frame';
import { azAltFromDirection } from '@/lib/units/vector';
import type { RunModel } from './run-model';
import { besideInFists, eyeRows, twinklingInWords, type Letters } from './twin-rows';

/** The eye takes in no more than this without a picture to rest on; fainter ones on request. */
const brightAsMagnitude = 3.25;

type TwinEyeProps = {
  model: RunModel;
  letters: Letters;
  /** The clutches are loose: until the start is set, nothing is known of where the dot is. */
  loose: boolean;
};

/** What the eye sees, without a telescope: about the red dot, or towards a signpost. */
export function TwinEye({ model, letters, loose }: TwinEyeProps) {
  const [chosen, setWhere] = useState<string | null>(null);
  const where = chosen ?? (loose ? 'north' : 'near');
  const [fainter, setFainter] = useState(false);
  const rows = eyeRows(
    model.lists.lights(),
    model.pose.dot,
    where,
    fainter ? Infinity : brightAsMagnitude,
  );
  const dot = azAltFromDirection(model.pose.dot);
  return (
    <section aria-labelledby="twin-eye" className="space-y-3">
      <h2 id="twin-eye" className="text-base font-semibold">
        What the eye sees
      </h2>
      <p className="max-w-measure text-sm">
        {loose ? null : `The red dot is ${positionInWords(dot.azimuthDeg, dot.altitudeDeg)}. `}
        Places are judged by hand and fist, to half a fist; a fist is 10°.
      </p>
      <div className="grid gap-3 sm:grid-cols-2">
        <Field label="Where to look">
          {(control) => (
            <Select
              {...control}
              value={where}
              onChange={(event) => {
                setWhere(event.target.value);
              }}
            >
              {loose ? null : <option value="near">Around the dot, three fists each way</option>}
              {signpostDirections.map(({ word }) => (
                <option key={word} value={word}>
                  Towards {word}
                </option>
              ))}
            </Select>
          )}
        </Field>
        <Field label="How bright">
          {(control) => (
            <Select
              {...control}
              value={fainter ? 'fainter' : 'bright'}
              onChange={(event) => {
                setFainter(event.target.value === 'fainter');
              }}
            >
              <option value="bright">The brighter ones</option>
              <option value="fainter">Fainter ones too</option>
            </Select>
          )}
        </Field>
      </div>
      {rows.length === 0 ? (
        <p>No light that the eye can make out there.</p>
      ) : (
        <TableFrame
          caption={
            where === 'near'
              ? `${String(rows.length)} lights around the dot, the nearest first`
              : `${String(rows.length)} lights towards ${where}, from left to right`
          }
        >
          <thead>
            <tr>
              <th scope="col">Light</th>
              {loose ? null : <th scope="col">From the dot</th>}
              <th scope="col">In the sky</th>
              <th scope="col">Looks</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ light, beside }) => (
              <tr key={light.id}>
                <th scope="row">{letters.of(light.id)}</th>
                {loose ? null : <td>{beside === null ? 'far from it' : besideInFists(beside)}</td>}
                <td>{positionInWords(light.azimuthDeg, light.altitudeDeg)}</td>
                <td>
                  {brightnessInWords(light.seenAs)}{' '}
                  <span className="font-figures text-soft">{toHalfMagnitude(light.seenAs)}</span>,{' '}
                  {twinklingInWords(light)}
                  {light.veiled ? ', in cloud' : ''}
                </td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      )}
    </section>
  );
}
