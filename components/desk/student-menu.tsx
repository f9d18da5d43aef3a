'use client';

import { useState, useTransition, type SubmitEvent } from 'react';
import { Button } from '@/components/ui/button';
import { buttonLook } from '@/components/ui/button-look';
import { Dialog } from '@/components/ui/dialog';
import { Field } from '@/components/ui/field';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import { extraTimes, type ExtraTime } from '@/lib/data/extra-time-input';
import type { Problem, Result } from '@/lib/data/result';
import type { RosterRow } from '@/lib/data/roster';
import { routes } from '@/lib/routes';

export type StudentActions = {
  rename: (studentId: string, name: string) => Promise<Result<null>>;
  remove: (studentId: string) => Promise<Result<null>>;
  markLeft: (studentId: string, left: boolean) => Promise<Result<null>>;
  allowExtraAttempts: (studentId: string, extra: number) => Promise<Result<null>>;
  allowExtraTime: (studentId: string, extra: ExtraTime) => Promise<Result<null>>;
};

const unreachable: Problem = {
  code: 'unreachable',
  message: 'The server did not answer. Nothing has changed; try again.',
};

const extraTimeText: Readonly<Record<ExtraTime, string>> = {
  none: 'as the assignment says',
  '1.25': 'a quarter more',
  '1.5': 'half as much again',
  '2': 'twice as much',
  untimed: 'no limit',
};

/** What can be done about one student, in one dialog: each with what it means. */
export function StudentMenu({
  student,
  actions,
  cardHref,
}: {
  student: RosterRow;
  actions: StudentActions;
  cardHref: string;
}) {
  const [open, setOpen] = useState(false);
  const [name, setName] = useState(student.displayName);
  const [extra, setExtra] = useState(String(student.extraAttempts));
  const [time, setTime] = useState(student.extraTime);
  const [asking, setAsking] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [busy, start] = useTransition();

  function run(work: () => Promise<Result<null>>): void {
    start(async () => {
      try {
        const answer = await work();
        setProblem(answer.ok ? null : answer.problem);
        if (answer.ok) setOpen(false);
      } catch {
        setProblem(unreachable);
      }
    });
  }
  const save = (event: SubmitEvent): void => {
    event.preventDefault();
    run(async () => {
      const renamed =
        name === student.displayName ? null : await actions.rename(student.studentId, name);
      if (renamed !== null && !renamed.ok) return renamed;
      const extraAttempts = Number(extra);
      const allowed =
        extraAttempts === student.extraAttempts
          ? null
          : await actions.allowExtraAttempts(student.studentId, extraAttempts);
      if (allowed !== null && !allowed.ok) return allowed;
      return time === student.extraTime
        ? { ok: true, value: null }
        : actions.allowExtraTime(student.studentId, time);
    });
  };
  const errorAt = (field: string): string | null =>
    problem?.field === field ? problem.message : null;

  return (
    <Dialog
      open={open}
      onOpenChange={(next) => {
        setOpen(next);
        setAsking(false);
        setProblem(null);
        setName(student.displayName);
        setExtra(String(student.extraAttempts));
        setTime(student.extraTime);
      }}
      trigger={
        <Button variant="plain" className="min-h-(--target-small)! px-0! py-0! text-sm!">
          Change<span className="sr-only"> {student.displayName}</span>
        </Button>
      }
      title={student.displayName}
      description={`Card ${student.cardNumber}`}
    >
      <div className="space-y-5">
        {problem !== null && problem.field === undefined ? (
          <Notice tone="danger" live="alert" title={problem.message} />
        ) : null}
        <form onSubmit={save} noValidate className="space-y-4">
          <Field label="Name to show" hint="A pseudonym will do." error={errorAt('name')}>
            {(control) => (
              <TextInput
                {...control}
                maxLength={60}
                value={name}
                onChange={(event) => setName(event.target.value)}
              />
            )}
          </Field>
          <Field
            label="Extra attempts"
            hint="On top of what each assignment allows. Only teachers see it; the gradebook file leaves it out."
            error={errorAt('extraAttempts')}
          >
            {(control) => (
              <TextInput
                {...control}
                inputMode="numeric"
                className="max-w-24 font-figures"
                value={extra}
                onChange={(event) => setExtra(event.target.value)}
              />
            )}
          </Field>
          <Field
            label="Time, where it counts"
            hint="Any of these also lets the student pause the sky in a check. It holds for attempts not yet started."
            error={errorAt('extraTime')}
          >
            {(control) => (
              <Select
                {...control}
                className="max-w-64"
                value={time}
                onChange={(event) =>
                  setTime(extraTimes.find((value) => value === event.target.value) ?? 'none')
                }
              >
                {extraTimes.map((value) => (
                  <option key={value} value={value}>
                    {extraTimeText[value]}
                  </option>
                ))}
              </Select>
            )}
          </Field>
          <Button type="submit" variant="primary" busy={busy}>
            Save
          </Button>
        </form>
        <div className="flex flex-wrap gap-2 border-t border-line pt-4">
          {student.leftAt === null ? (
            <LinkButton href={cardHref}>Make a new card</LinkButton>
          ) : null}
          <Button
            busy={busy}
            onClick={() => run(() => actions.markLeft(student.studentId, student.leftAt === null))}
          >
            {student.leftAt === null ? 'Has left' : 'Is back'}
          </Button>
          <a
            className={buttonLook('quiet', 'normal')}
            href={routes.teacher.studentFile(student.studentId)}
            download
          >
            Download data
          </a>
          {asking ? null : (
            <Button variant="danger" onClick={() => setAsking(true)}>
              Remove…
            </Button>
          )}
        </div>
        <p className="max-w-measure text-sm text-soft">
          {student.leftAt === null
            ? 'Who has left cannot sign in and is asked for nothing; all work is kept, and “Is back” undoes it.'
            : 'Left the class. “Is back” lets the old card in again; all work is still here.'}{' '}
          The data leaves out extra attempts and time; the Exports page can add them.
        </p>
        {asking ? (
          <Notice tone="danger" live="alert" title={`Remove ${student.displayName} for good?`}>
            <p>
              All attempts, marks and notes of this student are deleted, and the card stops working.
              It cannot be undone. Download the data first if somebody may ask for it.
            </p>
            <div className="flex flex-wrap gap-2">
              <Button onClick={() => setAsking(false)}>Leave it</Button>
              <Button
                variant="danger"
                busy={busy}
                onClick={() => run(() => actions.remove(student.studentId))}
              >
                Remove {student.displayName}
              </Button>
            </div>
          </Notice>
        ) : null}
      </div>
    </Dialog>
  );
}
