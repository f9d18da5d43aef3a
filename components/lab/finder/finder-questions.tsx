'use client';

import { useState } from 'react';
import { Field } from '@/components/ui/field';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import type { FinderAnswers } from '@/lib/grading/bench/finder/finder-submission';
import { numberIn } from '../run/number-in';
import type { FinderProps } from './finder-hand';
import { fieldInWords, metresInWords } from './finder-words';

const hours = Array.from({ length: 12 }, (_, i) => i + 1);

/** What some kinds of task ask beside the setting. */
export function FinderQuestions(props: FinderProps) {
  const { variant, draft, change } = props;
  const { answers } = draft;
  const answer = (part: Partial<FinderAnswers>, merge = false): void => {
    change({ ...draft, answers: { ...answers, ...part } }, '', { merge });
  };
  if (variant.template === 'set-by-another') {
    return (
      <div className="space-y-4">
        <SizeField
          label="With the dot on the light: how far from the eyepiece’s middle, in arcminutes?"
          value={answers.offArcmin}
          onValue={(offArcmin) => {
            answer({ offArcmin }, true);
          }}
        />
        <RadioGroup
          legend="It had been set on something"
          name="finder-set-on"
          inline
          options={(variant.setOnBefore?.optionsM ?? []).map((distanceM) => ({
            value: String(distanceM),
            label: `${metresInWords(distanceM)} away`,
          }))}
          value={answers.setOnM === null ? '' : String(answers.setOnM)}
          onValueChange={(value) => {
            answer({ setOnM: Number(value) });
          }}
        />
      </div>
    );
  }
  if (variant.template !== 'near-then-predict') return null;
  return (
    <div className="space-y-4">
      <SizeField
        label="Tonight the dot is on a star. How far from the eyepiece’s middle is the star, in arcminutes?"
        value={answers.offArcmin}
        onValue={(offArcmin) => {
          answer({ offArcmin }, true);
        }}
      />
      <Field
        label="Towards which hour, as this eyepiece shows it?"
        hint="12 is the top of the view."
      >
        {(control) => (
          <Select
            {...control}
            value={String(answers.towardsHour ?? '')}
            onChange={({ target }) => {
              if (target.value !== '') answer({ towardsHour: Number(target.value) });
            }}
          >
            {answers.towardsHour === null ? <option value="">Choose</option> : null}
            {hours.map((hour) => (
              <option key={hour} value={String(hour)}>
                {`${String(hour)} o’clock`}
              </option>
            ))}
          </Select>
        )}
      </Field>
      {(['low', 'high'] as const).map((which) => {
        const said = which === 'low' ? answers.inLow : answers.inHigh;
        return (
          <RadioGroup<'yes' | 'no' | ''>
            key={which}
            legend={`Will it be in the view of the ${fieldInWords(variant, which)}?`}
            name={`finder-in-${which}`}
            inline
            options={[
              { value: 'yes', label: 'Yes' },
              { value: 'no', label: 'No' },
            ]}
            value={said === null ? '' : said ? 'yes' : 'no'}
            onValueChange={(value) => {
              answer(which === 'low' ? { inLow: value === 'yes' } : { inHigh: value === 'yes' });
            }}
          />
        );
      })}
    </div>
  );
}

type SizeFieldProps = {
  label: string;
  value: number | null;
  onValue: (value: number | null) => void;
};

/** A number of arcminutes; what is typed stays as it is typed. */
function SizeField({ label, value, onValue }: SizeFieldProps) {
  const [text, setText] = useState(value === null ? '' : String(value));
  const read = (typed: string): number | null => numberIn(typed, 0, 600);
  // After a step back the field shows what holds, not what was typed last.
  const shown = read(text) === value ? text : value === null ? '' : String(value);
  return (
    <Field
      label={label}
      error={
        shown.trim() !== '' && read(shown) === null ? 'A number from 0 to 600, such as 12.' : null
      }
    >
      {(control) => (
        <TextInput
          {...control}
          inputMode="decimal"
          autoComplete="off"
          value={shown}
          onChange={(event) => {
            setText(event.target.value);
            onValue(read(event.target.value));
          }}
        />
      )}
    </Field>
  );
}
