'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import { numberIn } from './number-in';
import type { RunModel } from './run-model';
import { approachInWords } from './run-words';
import { byBrightness, seenAfterMove, type Letters } from './twin-rows';

const units = [
  { value: 'minutes', label: 'arcminutes (60 are a degree)', arcmin: 1, sign: '′' },
  { value: 'degrees', label: 'degrees', arcmin: 60, sign: '°' },
] as const;
type Unit = (typeof units)[number];

/** No axis turns farther than half a circle in one step. */
const mostArcmin = 10_800;

/** Moves by number: each button turns one axis that far, and the sky moves on by what the move takes. */
export function TwinMoves({ model, letters }: { model: RunModel; letters: Letters }) {
  const [unit, setUnit] = useState<Unit>(units[1]);
  const [sideways, setSideways] = useState('5');
  const [height, setHeight] = useState('5');
  const { finalApproach } = model.variant.setup;

  const move = (azimuthArcmin: number, altitudeArcmin: number, text: string): void => {
    if (!model.step(azimuthArcmin, altitudeArcmin)) return;
    const { lists } = model;
    model.tell(
      `${text}. ${seenAfterMove(
        byBrightness(lists.inEyepiece()),
        byBrightness(lists.inFinder()),
        letters,
        lists.eyepieceRadiusArcmin,
      )}`,
    );
  };
  return (
    <section aria-labelledby="twin-moves" className="space-y-3">
      <h2 id="twin-moves" className="text-base font-semibold">
        Move the tube
      </h2>
      <p className="max-w-measure text-sm">
        Last moves: {approachInWords(finalApproach)}, so that the play of the gears is taken up.
        High in the sky the azimuth axis has to turn farther than it looks: twice as far at 60° up.
      </p>
      <div className="grid gap-3 sm:grid-cols-3">
        <Field label="Numbers are">
          {(control) => (
            <Select
              {...control}
              value={unit.value}
              onChange={(event) => {
                setUnit(units.find(({ value }) => value === event.target.value) ?? unit);
              }}
            >
              {units.map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </Select>
          )}
        </Field>
        <MoveField
          label="Azimuth, along the horizon"
          text={sideways}
          unit={unit}
          onText={setSideways}
          buttons={['Left', 'Right']}
          onMove={(arcmin, word, shown) => {
            move(arcmin, 0, `Moved ${shown} ${word}`);
          }}
        />
        <MoveField
          label="Altitude, up and down"
          text={height}
          unit={unit}
          onText={setHeight}
          buttons={['Down', 'Up']}
          onMove={(arcmin, word, shown) => {
            move(0, arcmin, `Moved ${shown} ${word}`);
          }}
        />
      </div>
    </section>
  );
}

function MoveField({
  label,
  text,
  unit,
  onText,
  buttons,
  onMove,
}: {
  label: string;
  text: string;
  unit: Unit;
  onText: (text: string) => void;
  buttons: readonly [less: string, more: string];
  onMove: (arcmin: number, word: string, shown: string) => void;
}) {
  const value = numberIn(text, 0, mostArcmin / unit.arcmin);
  const wrong = value === null || value === 0;
  return (
    <div className="space-y-2">
      <Field
        label={`${label} (${unit.sign})`}
        error={
          wrong
            ? `Type how far: a number up to ${String(mostArcmin / unit.arcmin)}, without a sign.`
            : null
        }
      >
        {(control) => (
          <TextInput
            {...control}
            inputMode="decimal"
            autoComplete="off"
            value={text}
            onChange={(event) => {
              onText(event.target.value);
            }}
          />
        )}
      </Field>
      <div className="flex flex-wrap gap-2">
        {buttons.map((button, index) => (
          <Button
            key={button}
            onClick={() => {
              if (wrong) return;
              const sign = index === 0 ? -1 : 1;
              onMove(
                sign * value * unit.arcmin,
                button.toLowerCase(),
                `${String(value)}${unit.sign}`,
              );
            }}
          >
            {button}
          </Button>
        ))}
      </div>
    </div>
  );
}
