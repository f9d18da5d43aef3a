'use client';

import { useId, useState } from 'react';
import { Select } from '@/components/ui/select';
import { Drawn } from './drawn';
import { labelDrawing, labelWords, startingLabel, type LabelOf } from './label-facts';

const forms = [
  ['battery-pack', 'a battery pack'],
  ['usb-pack', 'a phone pack'],
  ['mains-adapter', 'a mains adapter'],
] as const;
const centres = [
  ['positive', 'plus'],
  ['negative', 'minus'],
] as const;
const volts = [5, 9, 12, 19, 24] as const;
const amperes = [0.5, 1, 2, 5] as const;

type ChoiceProps = {
  label: string;
  value: string;
  options: readonly (readonly [value: string, text: string])[];
  onChange: (value: string) => void;
};

function Choice({ label, value, options, onChange }: ChoiceProps) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className="text-sm font-semibold">
        {label}
      </label>
      <Select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        {options.map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </Select>
    </div>
  );
}

/** A supply whose label can be changed, beside the telescope's plate. */
export function LabelFigure() {
  const [label, setLabel] = useState<LabelOf>(startingLabel);
  const drawing = labelDrawing(label);
  const words = labelWords(label);
  return (
    <div>
      <Drawn {...drawing} label={`${drawing.alternative} ${words}`} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-6 gap-y-2 sm:grid-cols-2">
        <Choice
          label="It is"
          value={label.form}
          options={forms}
          onChange={(value) => {
            const found = forms.find(([key]) => key === value);
            if (found !== undefined) setLabel({ ...label, form: found[0] });
          }}
        />
        <Choice
          label="Volts on its label"
          value={String(label.volts)}
          options={volts.map((one) => [String(one), `${String(one)} V`])}
          onChange={(value) => setLabel({ ...label, volts: Number(value) })}
        />
        <Choice
          label="Amperes on its label"
          value={String(label.ratedA)}
          options={amperes.map((one) => [String(one), `${String(one)} A`])}
          onChange={(value) => setLabel({ ...label, ratedA: Number(value) })}
        />
        <Choice
          label="The middle pin is"
          value={label.centre}
          options={centres}
          onChange={(value) => {
            const found = centres.find(([key]) => key === value);
            if (found !== undefined) setLabel({ ...label, centre: found[0] });
          }}
        />
      </div>
    </div>
  );
}
