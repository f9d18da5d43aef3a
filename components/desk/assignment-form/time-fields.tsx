'use client';

import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { TextInput } from '@/components/ui/text-input';
import { splitLocalTime } from '../local-time-text';
import type { MomentAnswer } from './form-actions';

export type WallClock = { date: string; time: string; offset: string | null };

/** A date and a time on somebody's wall clock, in two fields that belong together. */
export function TimeFields({
  id,
  dateLabel,
  timeLabel,
  optional = false,
  value,
  error,
  onChange,
}: {
  id: string;
  dateLabel: string;
  timeLabel: string;
  optional?: boolean;
  value: WallClock;
  error: string | null;
  onChange: (value: WallClock) => void;
}) {
  return (
    <>
      <Field id={id} label={dateLabel} optional={optional} error={error}>
        {(control) => (
          <TextInput
            {...control}
            type="date"
            min="1900-01-01"
            max="2100-12-31"
            className="max-w-48 font-figures"
            value={value.date}
            onChange={(event) => onChange({ ...value, date: event.target.value, offset: null })}
          />
        )}
      </Field>
      <Field label={timeLabel} optional={optional}>
        {(control) => (
          <TextInput
            {...control}
            type="time"
            className="max-w-36 font-figures"
            value={value.time}
            onChange={(event) => onChange({ ...value, time: event.target.value, offset: null })}
          />
        )}
      </Field>
    </>
  );
}

/** What the server says of a time: what the sky does then, or which of two times may be meant. */
export function MomentNote({
  answer,
  onChoose,
}: {
  answer: MomentAnswer | null;
  onChoose: (value: WallClock) => void;
}) {
  return (
    // Kept mounted, so that what appears in it is read out.
    <div role="status" aria-live="polite">
      {answer === null ? null : answer.ok ? (
        answer.sunIsUp ? (
          <Notice tone="caution" title="The Sun is up then">
            <p>
              {answer.text} No star can be seen. In “Pick the pair” the right answer to every task
              will be to say so; the other labs need a dark sky.
            </p>
          </Notice>
        ) : (
          <p className="text-sm text-soft">{answer.text}</p>
        )
      ) : (
        <Notice tone="danger" title={answer.message}>
          {answer.candidates.length === 0 ? null : (
            <div className="mt-2 flex flex-wrap gap-2">
              {answer.candidates.map((candidate) => (
                <Button
                  key={candidate.localTime}
                  onClick={() => onChoose(splitLocalTime(candidate.localTime))}
                >
                  {candidate.label}
                </Button>
              ))}
            </div>
          )}
        </Notice>
      )}
    </div>
  );
}
