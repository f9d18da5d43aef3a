'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { wrap360 } from '@/lib/units/angle';
import { numberIn } from './number-in';
import type { RunModel } from './run-model';
import { declinationInWords } from './run-words';

const lowestDeg = -20;
const highestDeg = 90;

/**
 * The start position by number: turned until the compass reads so much, raised until the level on the
 * tube does. The needle keeps its declination, which the map of the place tells.
 */
export function TwinStart({ model, loose }: { model: RunModel; loose: boolean }) {
  const { scenario, setup } = model.variant;
  const { declinationDeg } = setup;
  const [compass, setCompass] = useState('');
  const [level, setLevel] = useState('');
  const [tried, setTried] = useState(false);
  const compassDeg = numberIn(compass, 0, 360);
  const levelDeg = numberIn(level, lowestDeg, highestDeg);
  return (
    <section aria-labelledby="twin-start" className="space-y-3">
      <h2 id="twin-start" className="text-base font-semibold">
        {loose ? 'Start position' : 'Set the start position again'}
      </h2>
      <p className="max-w-measure text-sm">
        Loosen the clutches, hold the tube and set it level, facing true north.{' '}
        {declinationInWords(declinationDeg, scenario.place.latitudeDeg)}
      </p>
      <form
        noValidate
        className="space-y-3"
        onSubmit={(event) => {
          event.preventDefault();
          setTried(true);
          if (compassDeg === null || levelDeg === null) return;
          const trueDeg = wrap360(compassDeg + declinationDeg);
          if (!model.setStart(trueDeg, levelDeg)) return;
          model.tell(
            `The compass reads ${String(compassDeg)}°, the level on the tube ${String(levelDeg)}°. The clutches are locked.`,
          );
        }}
      >
        <div className="grid gap-3 sm:grid-cols-2">
          <Field
            label="The compass along the tube reads (°)"
            hint="0 to 360, from the needle’s north clockwise"
            error={tried && compassDeg === null ? 'Type a number from 0 to 360.' : null}
          >
            {(control) => (
              <TextInput
                {...control}
                inputMode="decimal"
                autoComplete="off"
                value={compass}
                onChange={(event) => {
                  setCompass(event.target.value);
                }}
              />
            )}
          </Field>
          <Field
            label="The level on the tube reads (°)"
            hint="0 is level, more is up"
            error={tried && levelDeg === null ? 'Type a number from −20 to 90.' : null}
          >
            {(control) => (
              <TextInput
                {...control}
                inputMode="decimal"
                autoComplete="off"
                value={level}
                onChange={(event) => {
                  setLevel(event.target.value);
                }}
              />
            )}
          </Field>
        </div>
        <Button type="submit" variant={loose ? 'primary' : 'quiet'}>
          Set it and lock the clutches
        </Button>
      </form>
    </section>
  );
}
