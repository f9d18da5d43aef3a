'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { wrap360 } from '@/lib/units/angle';
import { numberIn } from '../run/number-in';
import type { Evening } from './evening';
import { onlyStarted, startedAt } from './rehearsal-work';
import { runBeginsAgainText } from './stage-words';

const lowestDeg = -20;
const highestDeg = 90;

/** The start position by number, as compass and level read. */
export function StartTable({
  evening,
  declinationDeg,
}: {
  evening: Evening;
  declinationDeg: number;
}) {
  const [compass, setCompass] = useState('');
  const [level, setLevel] = useState('');
  const [tried, setTried] = useState(false);
  const compassDeg = numberIn(compass, 0, 360);
  const levelDeg = numberIn(level, lowestDeg, highestDeg);
  const lost = onlyStarted(evening.draft.log) ? '' : ` ${runBeginsAgainText}`;
  const row = (
    label: string,
    hint: string,
    error: string | null,
    value: string,
    set: (text: string) => void,
  ) => (
    <Field label={label} hint={hint} error={error}>
      {(control) => (
        <TextInput
          {...control}
          inputMode="decimal"
          autoComplete="off"
          value={value}
          onChange={(event) => {
            set(event.target.value);
          }}
        />
      )}
    </Field>
  );
  return (
    <form
      noValidate
      aria-label="Start position"
      className="max-w-measure space-y-4"
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (compassDeg === null || levelDeg === null) return;
        evening.work(
          'start-position',
          startedAt(wrap360(compassDeg + declinationDeg), levelDeg),
          `The compass reads ${String(compassDeg)}°, the level on the tube ${String(levelDeg)}°. The clutches are loose.${lost}`,
        );
      }}
    >
      <h2 className="text-lg font-semibold">Lay the tube</h2>
      {row(
        'The compass along the tube reads (°)',
        '0 to 360, from the needle’s north clockwise',
        tried && compassDeg === null ? 'Type a number from 0 to 360.' : null,
        compass,
        setCompass,
      )}
      {row(
        'The level on the tube reads (°)',
        '0 is level, more is up',
        tried && levelDeg === null ? 'Type a number from −20 to 90.' : null,
        level,
        setLevel,
      )}
      <Button type="submit" variant="primary">
        Lay it like this
      </Button>
    </form>
  );
}
