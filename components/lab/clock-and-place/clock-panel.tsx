'use client';

import { RadioGroup } from '@/components/ui/radio-group';
import { SunCaution } from '@/components/ui/sun-caution';
import type { FormEntry } from '@/lib/clock/mount-form';
import { emptyFormDraft } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import type { ClockAndPlaceTemplate } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { rowNames } from './clock-words';
import type { ClockViewProps } from './clock-view';
import { CompassControls } from './compass-controls';
import { MountFormRows } from './mount-form-rows';
import { NightQuestions } from './night-questions';

const tasks: Readonly<Record<ClockAndPlaceTemplate, string>> = {
  'enter-the-card':
    'Tell the mount what the card says, in the way the mount wants it. From this it works out where every star stands.',
  'check-the-form':
    'Somebody has filled in the form from the card. Two rows are wrong: cross them out and enter what is right.',
  'dew-on-the-card':
    'The form was filled in before dew ran over the card, and the first slews went wrong. One of the three rows that cannot be read any more is wrong in the form. Name it by where the tube landed, and put it right.',
  'night-of-the-change':
    'Tonight the clocks change. First say what the time on the card can mean; where it can mean two moments, ask. Then enter it.',
  'far-from-home':
    'You are far from home, and the watch still shows home time. Work out the date and time here, and enter everything.',
  'by-the-needle':
    'Enter the place, then turn the tube until it looks to true north. All you have for that is a compass.',
};

/** The task, its questions and the form that the mount is told everything by. */
export function ClockPanel(props: ClockViewProps) {
  const { variant, draft, change } = props;
  return (
    <div className="space-y-4">
      <p>{tasks[variant.template]}</p>
      {variant.template === 'dew-on-the-card' ? (
        <RadioGroup<FormEntry | ''>
          legend="Which row sent the tube there?"
          name="clock-named"
          value={draft.named ?? ''}
          options={variant.open.map((value) => ({ value, label: rowNames[value] }))}
          onValueChange={(named) => {
            if (named === '') return;
            // What was entered for another row is dropped: only the named one is put right.
            change({ ...draft, named, form: emptyFormDraft }, `${rowNames[named]} is open now.`);
          }}
        />
      ) : null}
      <NightQuestions {...props} />
      <MountFormRows {...props} />
      {variant.declinationDeg === null ? null : <CompassControls draft={draft} change={change} />}
      <SunCaution short />
    </div>
  );
}
