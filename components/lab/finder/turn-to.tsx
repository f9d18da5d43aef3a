'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { highestTubeDeg, lowestTubeDeg } from '@/lib/finder/sights';
import { numberIn } from '../run/number-in';
import { finderHand, viewsInWords, type FinderProps } from './finder-hand';
import { fromSunInWords, placeInWords } from './finder-words';

/** Turns the tube straight to a direction typed in: for a way in pieces that keeps clear of the Sun. */
export function TurnTo(props: FinderProps) {
  const { variant } = props;
  const { act } = finderHand(props);
  const [azimuth, setAzimuth] = useState('');
  const [altitude, setAltitude] = useState('');
  const azimuthDeg = numberIn(azimuth, 0, 359.99);
  const altitudeDeg = numberIn(altitude, lowestTubeDeg, highestTubeDeg);
  return (
    <form
      className="flex flex-wrap items-end gap-3"
      onSubmit={(event) => {
        event.preventDefault();
        if (azimuthDeg === null || altitudeDeg === null) {
          props.change(
            props.draft,
            `Type a direction from 0 to 359 and a height from ${String(lowestTubeDeg)} to ${String(highestTubeDeg)}.`,
          );
          return;
        }
        act({ do: 'move', azimuthDeg, altitudeDeg }, (after) =>
          [
            `The tube points ${placeInWords(after.tube)}.`,
            fromSunInWords(variant, after, after.tube),
            viewsInWords(variant, after),
          ].join(' '),
        );
      }}
    >
      <div className="w-40">
        <Field label="Azimuth, degrees">
          {(control) => (
            <TextInput
              {...control}
              inputMode="decimal"
              autoComplete="off"
              value={azimuth}
              onChange={(event) => {
                setAzimuth(event.target.value);
              }}
            />
          )}
        </Field>
      </div>
      <div className="w-40">
        <Field label="Height, degrees">
          {(control) => (
            <TextInput
              {...control}
              inputMode="decimal"
              autoComplete="off"
              value={altitude}
              onChange={(event) => {
                setAltitude(event.target.value);
              }}
            />
          )}
        </Field>
      </div>
      <Button type="submit">Turn the tube</Button>
    </form>
  );
}
