'use client';

import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { RadioGroup } from '@/components/ui/radio-group';
import type { ClockVerdict } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { answerWhenAsked } from './card-words';
import type { ClockViewProps } from './clock-view';
import { dayOfYear, readingText } from './clock-words';
import { verdictWords } from './verdict-words';

/** What the time on the card can mean, before anything of it is entered. */
export function NightQuestions({ variant, draft, change }: ClockViewProps) {
  const night = variant.change;
  if (night === null) return null;
  const odd = draft.verdict !== null && draft.verdict !== 'plain';
  return (
    <div className="space-y-3">
      <RadioGroup<ClockVerdict | ''>
        legend="How often did clocks show this time?"
        name="clock-verdict"
        value={draft.verdict ?? ''}
        options={(['plain', 'skipped', 'twice'] as const).map((value) => ({
          value,
          label: verdictWords[value],
          disabled: draft.asked,
        }))}
        onValueChange={(verdict) => {
          if (verdict === '') return;
          change({ ...draft, verdict, readings: [] });
        }}
      />
      {odd ? (
        <fieldset className="space-y-1">
          <legend className="mb-1 font-semibold">Which two moments can it mean?</legend>
          {night.readings.map((reading, index) => (
            <Checkbox
              key={readingText(reading)}
              label={`${dayOfYear(reading)}, ${readingText(reading)}`}
              checked={draft.readings.includes(index)}
              disabled={draft.asked}
              onChange={(event) => {
                const others = draft.readings.filter((one) => one !== index);
                change({
                  ...draft,
                  readings: event.target.checked ? [...others, index].sort() : others,
                });
              }}
            />
          ))}
          {draft.asked ? null : (
            <Button
              aria-disabled={draft.readings.length !== 2}
              onClick={() => {
                if (draft.readings.length !== 2) {
                  change(draft, 'Tick the two moments first: then there is something to ask.');
                  return;
                }
                change({ ...draft, asked: true }, `The answer: ${answerWhenAsked(variant)}`);
              }}
            >
              Ask who wrote the card
            </Button>
          )}
        </fieldset>
      ) : null}
      {draft.asked ? (
        <p className="border-s-4 border-accent ps-3">
          <span className="text-sm text-soft">You asked. The answer: </span>
          {answerWhenAsked(variant)}
        </p>
      ) : null}
    </div>
  );
}
