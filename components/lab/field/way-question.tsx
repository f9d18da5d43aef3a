'use client';

import { RadioGroup } from '@/components/ui/radio-group';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';

type Way = NonNullable<FieldDraft['way']>;

type WayQuestionProps = {
  name: string;
  legend: string;
  along: string;
  up: string;
  /** What the second direction's two ends are called. */
  ends?: readonly [up: string, down: string];
  value: FieldDraft['way'];
  onChange: (value: Way) => void;
};

/** Two directions, answered one by one. */
export function WayQuestion(props: WayQuestionProps) {
  const { name, legend, along, up, value, onChange, ends = ['Up', 'Down'] } = props;
  const way = value ?? { along: null, up: null };
  return (
    <fieldset className="space-y-2">
      <legend className="font-semibold">{legend}</legend>
      <RadioGroup<'left' | 'right' | ''>
        legend={along}
        legendHidden
        name={`${name}-along`}
        inline
        value={way.along ?? ''}
        options={[
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
        onValueChange={(next) => {
          if (next !== '') onChange({ ...way, along: next });
        }}
      />
      <RadioGroup<'up' | 'down' | ''>
        legend={up}
        legendHidden
        name={`${name}-up`}
        inline
        value={way.up ?? ''}
        options={[
          { value: 'up', label: ends[0] },
          { value: 'down', label: ends[1] },
        ]}
        onValueChange={(next) => {
          if (next !== '') onChange({ ...way, up: next });
        }}
      />
    </fieldset>
  );
}
