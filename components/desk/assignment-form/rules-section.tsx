'use client';

import { Checkbox } from '@/components/ui/checkbox';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { DecimalField } from '../decimal-field';
import type { AssignmentDraft } from './assignment-draft';
import type { MomentAnswer } from './form-actions';
import { Section, type SectionProps } from './section';
import { Fold } from './fold';
import { attemptsWords, bookWords, feedbackWords, lateWords } from './set-words';
import { MomentNote, TimeFields } from './time-fields';

/** Attempts, due time, lateness, pass mark and feedback. */
export function RulesSection({
  draft,
  change,
  problemAt,
  due,
}: SectionProps<AssignmentDraft> & { due: MomentAnswer | null }) {
  const hasProblem = (fields: readonly string[]): boolean =>
    fields.some((field) => problemAt(field) !== null);
  return (
    <Section
      id="section-rules"
      title="Rules"
      lead="They freeze for an attempt when it starts; later changes meet later attempts only."
    >
      <div className="flex flex-wrap gap-x-6 gap-y-4">
        <TimeFields
          id="policy.dueAt"
          dateLabel="Due date"
          timeLabel="Due time"
          optional
          value={{ date: draft.dueDate, time: draft.dueTime, offset: draft.dueOffset }}
          error={problemAt('policy.dueAt')}
          onChange={({ date, time, offset }) =>
            change({ dueDate: date, dueTime: time, dueOffset: offset })
          }
        />
        <p className="self-end pb-2 text-sm text-soft">in the class’s zone, {draft.dueTimeZone}</p>
      </div>
      <MomentNote
        answer={due === null || due.ok ? null : due}
        onChoose={({ date, time, offset }) =>
          change({ dueDate: date, dueTime: time, dueOffset: offset })
        }
      />
      {/* Kept mounted, so that what appears in it is read out. */}
      <div role="status" aria-live="polite">
        {due?.ok === true && due.isOver ? (
          <Notice tone="caution" title="That is over already">
            <p>Students who have not started cannot start any more.</p>
          </Notice>
        ) : null}
      </div>
      <div className="space-y-3">
        <Fold
          title="Attempts and pass mark"
          now={`${attemptsWords(draft)}, pass mark ${draft.passMark}`}
          hasProblem={hasProblem(['policy.attemptsAllowed', 'policy.passMark'])}
        >
          <div className="flex flex-wrap gap-x-6 gap-y-4">
            <DecimalField
              id="policy.attemptsAllowed"
              label="Attempts"
              hint="Empty: as many as they like."
              error={problemAt('policy.attemptsAllowed')}
              value={draft.attemptsAllowed}
              onChange={(attemptsAllowed) => change({ attemptsAllowed })}
            />
            <Field
              id="policy.counting"
              label="Which attempt counts"
              hint="After any deduction for lateness."
            >
              {(control) => (
                <Select
                  {...control}
                  className="max-w-48"
                  value={draft.counting}
                  onChange={(event) => change({ counting: countingOf(event.target.value) })}
                >
                  <option value="best">the best</option>
                  <option value="last">the last</option>
                  <option value="first">the first</option>
                  <option value="average">the average</option>
                </Select>
              )}
            </Field>
            <DecimalField
              id="policy.passMark"
              label="Pass mark"
              unit="of 100"
              hint="Your own; it decides “complete” or “not yet passed”."
              error={problemAt('policy.passMark')}
              value={draft.passMark}
              onChange={(passMark) => change({ passMark })}
            />
          </div>
        </Fold>
        <Fold
          title="Late work"
          now={lateWords(draft)}
          hasProblem={hasProblem([
            'policy.graceMinutes',
            'policy.latePenaltyPerDay',
            'policy.latePenaltyCap',
          ])}
        >
          <div className="grid gap-x-6 gap-y-4 sm:grid-cols-3">
            <DecimalField
              id="policy.graceMinutes"
              label="Grace"
              unit="minutes"
              hint="Work done offline counts from its arrival."
              error={problemAt('policy.graceMinutes')}
              value={draft.graceMinutes}
              onChange={(graceMinutes) => change({ graceMinutes })}
            />
            <DecimalField
              id="policy.latePenaltyPerDay"
              label="Off per started day"
              unit="% of the mark"
              error={problemAt('policy.latePenaltyPerDay')}
              value={draft.latePercentPerDay}
              onChange={(latePercentPerDay) => change({ latePercentPerDay })}
            />
            <DecimalField
              id="policy.latePenaltyCap"
              label="At most"
              unit="% of the mark"
              error={problemAt('policy.latePenaltyCap')}
              value={draft.latePercentCap}
              onChange={(latePercentCap) => change({ latePercentCap })}
            />
          </div>
        </Fold>
        <Fold title="In the gradebook" now={bookWords(draft)} hasProblem={hasProblem(['weight'])}>
          <div className="flex flex-wrap items-start gap-x-6 gap-y-4">
            <DecimalField
              id="weight"
              label="Weight of the assignment"
              hint="In a student’s mean of all assignments. With 0 it does not count there."
              error={problemAt('weight')}
              value={draft.weight}
              onChange={(weight) => change({ weight })}
            />
            <Checkbox
              className="sm:mt-7"
              label="Complete only when signed off at the telescope"
              hint="The skills of its labs, seen by you; until then a pass waits for sign-off."
              checked={draft.needsSignOff}
              onChange={(event) => change({ needsSignOff: event.target.checked })}
            />
          </div>
        </Fold>
        <Fold
          title="Mark and feedback"
          now={feedbackWords(draft)}
          hasProblem={hasProblem(['policy.feedback'])}
        >
          <div id="policy.feedback" tabIndex={-1}>
            <RadioGroup
              legend="When students see mark and feedback"
              name="feedback"
              value={draft.feedback}
              error={problemAt('policy.feedback')}
              options={[
                {
                  value: 'at-once',
                  label: 'at once',
                  hint: 'Best for learning; with few attempts, answers may be passed on.',
                },
                { value: 'after-due', label: 'after the due time' },
                { value: 'when-released', label: 'when I release it' },
              ]}
              onValueChange={(feedback) => change({ feedback })}
            />
          </div>
        </Fold>
      </div>
    </Section>
  );
}

const countings = ['best', 'last', 'first', 'average'] as const;
const countingOf = (text: string): AssignmentDraft['counting'] =>
  countings.find((value) => value === text) ?? 'best';
